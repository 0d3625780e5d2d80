import { randomUUID } from 'node:crypto';
import { ok, type Result } from '../foundation/result.ts';
import type { ComparisonRecord } from '../records/comparison.ts';
import { openStore, type Store } from '../store/openStore.ts';
import { findingSentence } from '../studio/proofs/comparisonWords.ts';
import { type Announcer, createAnnouncer } from './announcing.ts';
import { foldVersion } from './bench/foldVersion.ts';
import type { RunAnnouncement, RunAnnouncements } from './bench/logging.ts';
import { createRunFolds, type RunFolds } from './bench/runFolds.ts';
import { warmFolds } from './bench/warmFolds.ts';
import { createDailyCopies, type DailyCopies } from './copies/dailyCopies.ts';
import type { DeviceParts } from './devices/deviceParts.ts';
import { createLettingInDesk } from './devices/lettingInDesk.ts';
import { createEditionSheetDesk, type EditionSheetDesk } from './editions/editionSheetDesk.ts';
import type { LedgerAnnouncement, LedgerAnnouncements } from './editions/logImpression.ts';
import { engineVersion } from './engineVersion.ts';
import { placeStartingTables } from './etchTables/placeStartingTables.ts';
import { createExportDesk, type ExportDesk } from './export/exportDesk.ts';
import type { ComparisonEvent, ComparisonEvents } from './measuring/comparisonEvents.ts';
import { createMeasuringQueue, type MeasuringQueue } from './measuring/measuringQueue.ts';
import { resumeInterrupted } from './measuring/resumeInterrupted.ts';
import { createPictureDesk, type PictureDesk } from './pictures/pictureDesk.ts';
import { createPlanDesk, type PlanDesk } from './plan/planDesk.ts';
import { createPlanSheetDesk, type PlanSheetDesk } from './plan/planSheetDesk.ts';
import { createFixedSheet } from './protocol/fixedSheet.ts';
import type { PullEvent, PullEvents } from './pulls/pullEvents.ts';
import { createPullQueue, type PullQueue } from './pulls/pullQueue.ts';
import { resumePulls } from './pulls/resumePulls.ts';
import { limitConcurrency } from './threads/limitConcurrency.ts';
import { threadModule } from './threads/runInThread.ts';
import type { WorkTold } from './threads/workInThread.ts';
import { sweepUploads } from './uploads/sweepUploads.ts';
import { createUploadAllowance, type DailyUploads, type UploadAllowance } from './uploads/uploadAllowance.ts';
import { createUploadTurns, type UploadTurns } from './uploads/uploadTurns.ts';

/** All that the use cases are given, for one open data folder. */
export interface Services extends Pick<DeviceParts, 'lettingIn' | 'tokenKey' | 'shutOut'> {
  readonly store: Store;
  readonly events: ComparisonEvents;
  readonly runEvents: RunAnnouncements;
  readonly runFolds: RunFolds;
  readonly ledgerEvents: LedgerAnnouncements;
  readonly workEvents: Announcer<WorkTold>;
  readonly queue: MeasuringQueue;
  readonly pullEvents: PullEvents;
  readonly pullQueue: PullQueue;
  readonly desk: PictureDesk;
  readonly planDesk: PlanDesk;
  readonly now: () => Date;
  readonly newId: () => string;
  readonly largestBytes: number;
  readonly findingOf: (record: ComparisonRecord) => string;
  /** The photograph protocol as a PDF. */
  readonly protocolSheet: () => Promise<Result<Uint8Array>>;
  /** The hatch scale, by which tones are told by eye, as a PDF. */
  readonly hatchScaleSheet: () => Promise<Result<Uint8Array>>;
  readonly planSheets: PlanSheetDesk;
  readonly editionSheets: EditionSheetDesk;
  readonly exports: ExportDesk;
  readonly copies: DailyCopies;
  readonly uploadTurns: UploadTurns;
  readonly uploadAllowance: UploadAllowance;
  /** Ends what runs (measuring resumes at the next start) and closes the data folder. */
  close(): Promise<void>;
}

export interface ServiceOptions {
  readonly dataFolder: string;
  /** The largest photograph that is taken in, bytes. */
  readonly largestBytes: number;
  /** The measuring thread's module; the engine's own unless given. */
  readonly measuringModule?: URL;
  /** The module of the thread that reads pulls; the engine's own unless given. */
  readonly pullModule?: URL;
  /** Where a copy goes once a day; none are made unless given. */
  readonly copiesFolder?: string;
  /** How much a device may send within a day, where not the usual. */
  readonly dailyUploads?: DailyUploads;
  /** The machine's clock unless given. */
  readonly now?: () => Date;
}

/** How often uploads are looked through for those whose day is over, ms. */
const sweepEveryMs = 3_600_000;

/** Opens a data folder with everything that works on it, and goes on measuring what was left waiting. */
export async function openServices(options: ServiceOptions): Promise<Result<Services>> {
  const opened = await openStore(options.dataFolder);
  if (!opened.ok) return opened;
  const store = opened.value;
  const events = createAnnouncer<ComparisonEvent>();
  const runEvents = createAnnouncer<RunAnnouncement>();
  const desk = createPictureDesk(store);
  const planDesk = createPlanDesk();
  const planSheets = createPlanSheetDesk();
  const editionSheets = createEditionSheetDesk();
  const exports = createExportDesk();
  const module = options.measuringModule ?? threadModule(import.meta.url, 'measuring/measuringThread');
  const runFolds = createRunFolds({ store, version: foldVersion() });
  runEvents.subscribe(runFolds.heard);
  const now = options.now ?? (() => new Date());
  const copies = createDailyCopies({
    dataFolder: options.dataFolder,
    folder: options.copiesFolder ?? null,
    now,
    complain: console.error,
  });
  const turn = limitConcurrency(1);
  const queue = createMeasuringQueue({
    store,
    events,
    module,
    engineVersion,
    findingOf: findingSentence,
    turn,
  });
  const pullEvents = createAnnouncer<PullEvent>();
  const pullModule = options.pullModule ?? threadModule(import.meta.url, 'pulls/pullThread');
  const pullQueue = createPullQueue({ store, events: pullEvents, module: pullModule, now, turn });
  const tokenKey = await store.networkFiles.tokenKey();
  await placeStartingTables({ store, now });
  await resumeInterrupted(store);
  await resumePulls(store);
  await sweepUploads({ store, now });
  const sweeping = setInterval(() => void sweepUploads({ store, now }).catch(console.error), sweepEveryMs);
  sweeping.unref();
  queue.wake();
  pullQueue.wake();
  const warming = warmFolds({ store, runFolds });
  return ok({
    store,
    events,
    runEvents,
    runFolds,
    ledgerEvents: createAnnouncer<LedgerAnnouncement>(),
    workEvents: createAnnouncer<WorkTold>(),
    queue,
    pullEvents,
    pullQueue,
    desk,
    planDesk,
    now,
    newId: randomUUID,
    largestBytes: options.largestBytes,
    findingOf: findingSentence,
    protocolSheet: createFixedSheet('protocolThread'),
    hatchScaleSheet: createFixedSheet('hatchScaleThread'),
    planSheets,
    editionSheets,
    exports,
    copies,
    uploadTurns: createUploadTurns(),
    uploadAllowance: createUploadAllowance(now, options.dailyUploads),
    lettingIn: createLettingInDesk(now),
    tokenKey,
    shutOut: createAnnouncer<string>(),
    async close() {
      clearInterval(sweeping);
      await Promise.all([
        queue.stop(),
        pullQueue.stop(),
        desk.stop(),
        planSheets.stop(),
        editionSheets.stop(),
        exports.stop(),
        copies.stop(),
        warming.stop(),
      ]);
      await runFolds.settle();
      await store.close();
    },
  });
}
