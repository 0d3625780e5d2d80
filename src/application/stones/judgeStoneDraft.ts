import { type Failure, failure } from '../../foundation/failure.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { judgePhotographs } from '../judgePhotographs.ts';
import { judgeStoneZones } from '../works/judgeStoneZones.ts';
import { judgeStone } from './judgeStone.ts';

/** Judges a stone before it is kept: possible size, a name of its own among stones in use, photographs kept here. */
export async function judgeStoneDraft(
  records: Pick<KeptRecords, 'stones' | 'photographs'>,
  stone: KeptStone,
): Promise<Failure | null> {
  const impossible = judgeStone({ ...stone, thicknessesMm: stone.cornerThicknessMm }, 'widthMm');
  if (impossible) return { ...impossible, path: wrongField(stone) };
  if (!stone.putBy && (await records.stones.hasName(stone.name, stone.id))) {
    return failure('name-taken', { what: 'stone', name: stone.name }, 'name');
  }
  return judgePhotographs(records, stone.photographs);
}

/** Which field of an impossible size to look at. */
function wrongField({ widthMm, heightMm, cornerThicknessMm }: KeptStone): string {
  const possible = (size: { widthMm?: number; heightMm?: number; thicknessMm?: number | null }) =>
    judgeStone({
      widthMm: size.widthMm ?? 400,
      heightMm: size.heightMm ?? 400,
      thicknessesMm: [size.thicknessMm ?? null],
    }) === null;
  if (!possible({ widthMm })) return 'widthMm';
  if (!possible({ heightMm })) return 'heightMm';
  const corner = cornerThicknessMm.findIndex((thicknessMm) => !possible({ thicknessMm }));
  return `cornerThicknessMm[${corner}]`;
}

/** Judges whether every work in use still lies on its stone after a change of size; null when all do. */
export async function judgeWorksOnStone(
  records: Pick<KeptRecords, 'works'>,
  stone: KeptStone,
): Promise<Failure | null> {
  for (const work of await records.works.onStone(stone.id, Number.MAX_SAFE_INTEGER)) {
    const fault = judgeStoneZones(work.zones, stone);
    if (fault?.code !== 'zone-off-stone') continue;
    const index = Number(/\d+/.exec(fault.path ?? '')?.[0]);
    const part = `the zone ${work.zones[index]?.name ?? index}`;
    const size = { width: stone.widthMm, height: stone.heightMm };
    return failure('stone-too-small', { ...size, part, work: work.title }, 'widthMm');
  }
  return null;
}
