import type { Rack, RackLine } from '../../records/rack.ts';
import type { RunEvent, RunSummary } from '../../records/run.ts';
import type { WorkOnRack } from '../../store/repositories/waitRepository.ts';
import { eventMoments } from '../../studio/bench/eventMoments.ts';
import { inRackOrder } from '../../studio/bench/rackOrder.ts';
import { remindersOf } from '../../studio/bench/reminders.ts';
import type { PressHand } from '../../studio/editions/pressHand.ts';
import { pressHands } from './pressHands.ts';
import type { ReadRunParts } from './readRun.ts';
import { readStanding } from './readStanding.ts';

export type ReadRackParts = ReadRunParts;

/** More works in use than a rack holds; those of which something was logged are never left out. */
const mostTyped = 500;

/** A line of the rack with the run that it stands on, what was logged in it last, and the press last; null where there is none. */
export interface RackRow {
  readonly line: RackLine;
  readonly run: RunSummary | null;
  readonly last: RunEvent | null;
  readonly press: PressHand | null;
}

/**
 * One line for every work in use, what can wait least first, and what to think of. A work whose stone was regrained
 * is gone and has no line.
 */
export async function readRack(parts: ReadRackParts): Promise<Rack> {
  const rows = await readRackRows(parts);
  const ordered = inRackOrder(rows.map(({ line }) => line));
  return { lines: ordered, reminders: remindersOf(ordered, parts.now()) };
}

/** The lines of the rack in no order: few reads, however many works there are. */
export async function readRackRows(parts: ReadRackParts): Promise<readonly RackRow[]> {
  const { waits, runs } = parts.store;
  const newest = await runs.newestOfWorks();
  const runOf = new Map(newest.map((run) => [run.workId, run]));
  const lastOf = await waits.lastEvents(newest);
  const works = await waits.worksOnRack([...runOf.keys()], mostTyped);
  const hands = await pressHands(
    parts.store,
    works.map(({ id }) => id),
  );
  const rows: RackRow[] = [];
  for (const work of works) {
    const run = runOf.get(work.id) ?? null;
    const last = (run && lastOf.get(run.id)) ?? null;
    const press = hands.get(work.id) ?? null;
    const line = await lineOf(parts, work, run, last, press);
    if (line.standing.next !== null || line.standing.stage !== 'regrain')
      rows.push({ line, run, last, press });
  }
  return rows;
}

async function lineOf(
  parts: ReadRackParts,
  work: WorkOnRack,
  run: RunSummary | null,
  last: RunEvent | null,
  hand: PressHand | null,
): Promise<RackLine> {
  return {
    workId: work.id,
    title: work.title,
    stoneId: work.stoneId,
    stoneName: work.stone.name,
    widthMm: work.stone.widthMm,
    heightMm: work.stone.heightMm,
    colour: work.stone.colour,
    runId: run?.id ?? null,
    standing: await readStanding(parts, work, run, hand),
    left: leftAt(last),
  };
}

/** What was ticked when somebody left, where that is the last thing that was logged. */
function leftAt(last: RunEvent | null): RackLine['left'] {
  if (last?.kind !== 'left') return null;
  const at = eventMoments([last]).moments.get(last.sequence)!;
  return { at: new Date(at.ms).toISOString(), done: last.payload.done };
}
