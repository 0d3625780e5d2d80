import type { RunEvent, RunEventKind, RunSummary } from '../../records/run.ts';
import type { WorkStage } from '../../records/work.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { foldRun } from '../../studio/bench/foldRun.ts';
import { workStageTold } from '../../studio/bench/workStageTold.ts';

/** The kinds that can begin, end or take back a stage; taps on places can't, and there may be very many. */
const stageKinds: readonly RunEventKind[] = [
  'stage-started',
  'stage-ended',
  'skipped',
  'repeated',
  'remembered',
  'undo',
];
/** More stages than a run ever tells. */
const mostEvents = 5000;

/**
 * Lets an event that was just kept move the stage of its work, where it changes what the log tells, so that every
 * list says what the bench says. What a person typed meanwhile stays until the log tells something else.
 */
export async function moveWork(
  { runs, works }: Pick<KeptRecords, 'runs' | 'works'>,
  run: RunSummary,
  kind: RunEventKind,
  now: Date,
): Promise<void> {
  if (!stageKinds.includes(kind)) return;
  const events = await runs.events(run.id, { after: 0, limit: mostEvents, only: stageKinds });
  const told = await toldBy(runs, run, events);
  const toldBefore = await toldBy(runs, run, events.slice(0, -1));
  if (told === null || told === toldBefore) return;
  const work = await works.find(run.workId);
  if (work === null || work.stage === told) return;
  const next = { ...work, stage: told, version: work.version + 1, changedAt: now.toISOString() };
  await works.save(next, work.version);
}

async function toldBy(
  runs: Pick<KeptRecords['runs'], 'workStageAtStart'>,
  run: RunSummary,
  events: readonly RunEvent[],
): Promise<WorkStage | null> {
  return workStageTold(foldRun(events).stages) ?? (await runs.workStageAtStart(run.id));
}
