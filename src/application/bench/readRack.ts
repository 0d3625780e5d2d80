import type { Rack, RackLine } from '../../records/rack.ts';
import type { RunSummary } from '../../records/run.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { Work } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { eventMoments } from '../../studio/bench/eventMoments.ts';
import { inRackOrder } from '../../studio/bench/rackOrder.ts';
import { remindersOf } from '../../studio/bench/reminders.ts';
import type { ReadRunParts } from './readRun.ts';
import { readStanding } from './readStanding.ts';

export interface ReadRackParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Pick<KeptRecords, 'stones'>;
}

/** More works in use than a rack holds; those of which something was logged are never left out. */
const mostTyped = 500;

/**
 * One line for every work in use, what can wait least first, and what to think of. A work whose stone was regrained
 * is gone and has no line.
 */
export async function readRack(parts: ReadRackParts): Promise<Rack> {
  const { store, now } = parts;
  const runs = new Map((await store.runs.newestOfWorks()).map((run) => [run.workId, run]));
  const stones = new Map<string, KeptStone>();
  const lines: RackLine[] = [];
  for (const id of await worksInUse(store, runs)) {
    const work = await store.works.find(id);
    if (work === null) continue;
    const stone = stones.get(work.stoneId) ?? (await store.stones.find(work.stoneId));
    if (stone === null) continue;
    stones.set(stone.id, stone);
    const line = await lineOf(parts, work, stone, runs.get(id) ?? null);
    if (line.standing.next !== null || line.standing.stage !== 'regrain') lines.push(line);
  }
  const ordered = inRackOrder(lines);
  return { lines: ordered, reminders: remindersOf(ordered, now()) };
}

async function worksInUse(
  { works }: Pick<KeptRecords, 'works'>,
  runs: ReadonlyMap<string, RunSummary>,
): Promise<ReadonlySet<string>> {
  const query = { search: '', archived: 'no', stone: null, stage: null, after: null } as const;
  const page = await works.list({ ...query, limit: mostTyped });
  return new Set([...runs.keys(), ...(page?.works ?? []).map(({ id }) => id)]);
}

async function lineOf(
  parts: ReadRackParts,
  work: Work,
  stone: KeptStone,
  run: RunSummary | null,
): Promise<RackLine> {
  return {
    workId: work.id,
    title: work.title,
    stoneId: stone.id,
    stoneName: stone.name,
    widthMm: stone.widthMm,
    heightMm: stone.heightMm,
    colour: stone.colour,
    runId: run?.id ?? null,
    standing: await readStanding(parts, work, run),
    left: run && (await leftAt(parts, run)),
  };
}

/** What was ticked when somebody left, where that is the last thing that was logged. */
async function leftAt({ store }: ReadRunParts, run: RunSummary): Promise<RackLine['left']> {
  if (run.events === 0) return null;
  const [last] = await store.runs.events(run.id, { after: run.events - 1, limit: 1 });
  if (last?.kind !== 'left') return null;
  const at = eventMoments([last]).moments.get(last.sequence)!;
  return { at: new Date(at.ms).toISOString(), done: last.payload.done };
}
