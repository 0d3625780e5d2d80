import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { type PulledCells, seriesChanges } from '../../imaging/evidence/seriesChanges.ts';
import type { Pull } from '../../records/pull.ts';
import type { Features, KeptOutcome, PullSuspects } from '../../records/suspects.ts';
import type { Work } from '../../records/work.ts';
import type { WorkSeries } from '../../records/workSeries.ts';
import type { Store } from '../../store/openStore.ts';
import { comparablePulls } from '../../studio/proofs/comparablePulls.ts';
import { answerSuspects } from '../../studio/proofs/suspects/answerSuspects.ts';
import type { ReadRunParts } from '../bench/readRun.ts';
import { stoneJob } from '../pulls/pullJob.ts';
import type { PullQueue } from '../pulls/pullQueue.ts';
import { readSeries } from '../pulls/readSeries.ts';
import { settingsOf } from '../pulls/seriesSettings.ts';
import { noSuchWork } from '../works/findWork.ts';
import { caseOutcomes } from './caseOutcomes.ts';
import { logFeaturesOf } from './logFeaturesOf.ts';
import { type KeptTones, pullEvidence } from './pullEvidence.ts';

/** Over so many comparable pulls, the newest, it is looked at what grows. Our rule. */
const mostPulls = 8;

interface MeasuredPull {
  readonly pull: Pull;
  readonly kept: KeptTones;
}

export interface PullSuspectParts extends ReadRunParts {
  readonly store: ReadRunParts['store'] & Store;
  readonly pullQueue: Pick<PullQueue, 'read'>;
}

/**
 * Suspects behind what the newest measured pull shows against its drawn stone, what changed from the measured pulls before it that were
 * printed on the same paper and read at the same age, and the newest run's log, with the outcomes that were kept for it.
 * @returns `not-found` for no such work, or where no pull of it was entered
 */
export async function readPullSuspects(
  parts: PullSuspectParts,
  workId: string,
): Promise<Result<PullSuspects>> {
  const { store } = parts;
  const work = await store.works.find(workId);
  if (work === null) return fail(noSuchWork());
  const newestFirst = (await store.pulls.ofWork(workId)).toReversed();
  const series = await readSeries(parts, workId);
  if (!series.ok) return series;
  const alike = comparableNumbers(series.value);
  const measured: MeasuredPull[] = [];
  for (const pull of newestFirst) {
    const wanted = measured.length === 0 || (alike.includes(pull.number) && measured.length < mostPulls);
    const kept = wanted ? await keptTones(store, pull) : null;
    if (kept) measured.push({ pull, kept });
  }
  const judged = measured[0]?.pull ?? newestFirst[0];
  if (!judged) return fail(failure('not-found', { what: 'pull of this work' }));
  const run = (await store.runs.ofWork(workId))[0]?.id ?? null;
  const log = run === null ? ok<Features>({}) : await logFeaturesOf(parts, run);
  if (!log.ok) return log;
  const seen = await seenOn(parts, work, measured, series.value.noise.sigma?.value ?? null);
  const answer = answerSuspects({
    features: { ...seen.features, ...log.value },
    ...(await caseOutcomes(store, { pullId: judged.id })),
    room: await store.suspectOutcomes.counts(),
  });
  return ok({
    pull: { id: judged.id, number: judged.number },
    before: measured[1]?.pull.number ?? null,
    run,
    answer: { ...answer, warnings: [...seen.missing, ...answer.warnings] },
  });
}

/** Keeps what came of a test at the newest measured pull, or the cause found behind it. */
export async function keepPullOutcome(
  parts: PullSuspectParts & { readonly now: () => Date; readonly newId: () => string },
  workId: string,
  outcome: KeptOutcome,
): Promise<Result<PullSuspects>> {
  const before = await readPullSuspects(parts, workId);
  if (!before.ok) return before;
  const pullId = before.value.pull.id;
  await parts.store.suspectOutcomes.add({
    id: parts.newId(),
    pullId,
    at: parts.now().toISOString(),
    outcome,
  });
  return readPullSuspects(parts, workId);
}

async function keptTones(store: Store, pull: Pull): Promise<KeptTones | null> {
  for (const { state, resultKey } of await store.pullMeasurings.ofPull(pull.id)) {
    const tones = state === 'measured' && resultKey !== null ? await store.pullFiles.record(resultKey) : null;
    if (tones) return { tones, key: resultKey! };
  }
  return null;
}

async function seenOn(
  parts: PullSuspectParts,
  work: Work,
  newestFirst: readonly MeasuredPull[],
  roomDeviation: number | null,
): Promise<{ readonly features: Features; readonly missing: readonly string[] }> {
  if (newestFirst.length === 0)
    return { features: {}, missing: ['No pull of this work was measured from a photograph yet.'] };
  const settings = await settingsOf(parts.store, work);
  const job = await stoneJob(parts, work, settings, 'drawn');
  const tones = job.ok ? await parts.pullQueue.read(job.value) : job;
  if (!job.ok || !tones.ok)
    return {
      features: {},
      missing: ['The drawn stone could not be read: photograph it with its four marks.'],
    };
  const stone = { tones: tones.value, key: job.value.key };
  const reference = settings.reference?.darkness ?? null;
  const cells: PulledCells[] = [];
  let features: Features | null = null;
  for (const { pull, kept } of newestFirst) {
    const evidence = await pullEvidence(parts.store, stone, kept, job.value.job.zones, reference);
    if (!evidence && features === null) break;
    if (!evidence) continue;
    features ??= evidence.features;
    cells.unshift({ number: pull.number, cells: evidence.cells });
  }
  if (features === null)
    return {
      features: {},
      missing: ['No solid was found on the stone or the print: coverage can’t be told without one.'],
    };
  const changes = seriesChanges(cells, roomDeviation);
  return {
    features: { ...features, ...changes },
    missing: changes
      ? []
      : [
          'There is no measured pull before it on the same paper and of the same age: what grows or stays is not known.',
        ],
  };
}

/** Pulls read from photographs that may be held against the latest of them. */
function comparableNumbers({ pulls }: WorkSeries): readonly number[] {
  const read = pulls.filter(({ how }) => how === 'camera');
  return comparablePulls(
    read.map(({ number: n, paper, age }) => ({
      n,
      paper,
      age,
      faults: [],
      lights: null,
      middles: null,
      darks: null,
    })),
  ).comparable.map(({ n }) => n);
}
