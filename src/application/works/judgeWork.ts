import { type Failure, failure } from '../../foundation/failure.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work, WorkOrigin, WorkRectangle } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { factsBefore } from '../../studio/stones/workHistory.ts';
import { judgePhotographs } from '../judgePhotographs.ts';
import { judgeStoneZones } from './judgeStoneZones.ts';

/** A rectangle smaller than this measures nothing; the measuring engine's own limit. */
const smallestRectangleMm = 10;
/** A rectangle may reach this far over the edge: what a rounding brings. Our rule. */
const edgeToleranceMm = 0.5;

/**
 * Judges a work before it is kept: its stone is here and in use, rectangle and zones lie on it, photographs are kept
 * here, its past holds nothing that comes later. Null when usable, else the first fault with its path.
 */
export async function judgeWork(
  records: Pick<KeptRecords, 'stones' | 'photographs'>,
  work: Work,
): Promise<Failure | null> {
  const stone = await records.stones.find(work.stoneId);
  if (stone === null) return failure('reference-unknown', { what: 'stone', id: work.stoneId }, 'stoneId');
  if (stone.putBy && !work.putBy) {
    return failure('put-by', { what: `The stone ${stone.name}` }, 'stoneId');
  }
  return (
    judgeOrigin(work.origin) ??
    judgeRectangle(work.rectangle, stone) ??
    judgeStoneZones(work.zones, stone) ??
    judgePhotographs(records, work.photographs)
  );
}

function judgeOrigin(origin: WorkOrigin): Failure | null {
  if (origin.kind === 'new') return null;
  const before = new Set<string>(factsBefore(origin.stage));
  const told = new Set<string>();
  for (const [index, { fact, value }] of origin.history.entries()) {
    const path = `origin.history[${index}]`;
    const later = value !== null && !before.has(fact);
    const why = later ? `${fact} comes after the stage ${origin.stage}` : `${fact} is told twice`;
    if (later || told.has(fact)) return failure('body-malformed', { why }, `${path}.fact`);
    told.add(fact);
  }
  return null;
}

function judgeRectangle(rectangle: WorkRectangle | null, stone: KeptStone): Failure | null {
  if (rectangle === null) return null;
  const { offsetMm, sizeMm } = rectangle;
  const extent = [stone.widthMm, stone.heightMm];
  const off = extent.some(
    (most, axis) =>
      offsetMm[axis]! < -edgeToleranceMm ||
      sizeMm[axis]! < smallestRectangleMm ||
      offsetMm[axis]! + sizeMm[axis]! > most + edgeToleranceMm,
  );
  if (!off) return null;
  return failure('rectangle-off-stone', { width: stone.widthMm, height: stone.heightMm }, 'rectangle');
}
