import type { Kysely } from 'kysely';
import type { Result } from '../foundation/result.ts';
import type { Tables } from './database/tables.ts';
import { type BatchRepository, batchRepositoryIn } from './repositories/batchRepository.ts';
import { type DeadlineRepository, deadlineRepositoryIn } from './repositories/deadlineRepository.ts';
import { type DeviceRepository, deviceRepositoryIn } from './repositories/deviceRepository.ts';
import { type EditionRepository, editionRepositoryIn } from './repositories/editionRepository.ts';
import { type EtchTableRepository, etchTableRepositoryIn } from './repositories/etchTableRepository.ts';
import { type FoldRepository, foldRepositoryIn } from './repositories/foldRepository.ts';
import {
  type ForeignProtocolRepository,
  foreignProtocolRepositoryIn,
} from './repositories/foreignProtocolRepository.ts';
import { type InkRepository, inkRepositoryIn } from './repositories/inkRepository.ts';
import { type KitRepository, kitRepositoryIn } from './repositories/kitRepository.ts';
import { type LedgerRepository, ledgerRepositoryIn } from './repositories/ledgerRepository.ts';
import { type MaterialRepository, materialRepositoryIn } from './repositories/materialRepository.ts';
import { type MediumRepository, mediumRepositoryIn } from './repositories/mediumRepository.ts';
import { type PhotographRepository, photographRepositoryIn } from './repositories/photographRepository.ts';
import { type PlanRepository, planRepositoryIn } from './repositories/planRepository.ts';
import {
  type PullMeasuringRepository,
  pullMeasuringRepositoryIn,
} from './repositories/pullMeasuringRepository.ts';
import { type PullRepository, pullRepositoryIn } from './repositories/pullRepository.ts';
import { type ReportRepository, reportRepositoryIn } from './repositories/reportRepository.ts';
import { type RunRepository, runRepositoryIn } from './repositories/runRepository.ts';
import { type SeriesRepository, seriesRepositoryIn } from './repositories/seriesRepository.ts';
import { type StoneRepository, stoneRepositoryIn } from './repositories/stoneRepository.ts';
import { type StudioRepository, studioRepositoryIn } from './repositories/studioRepository.ts';
import { type TestPlanRepository, testPlanRepositoryIn } from './repositories/testPlanRepository.ts';
import { type TestStoneRepository, testStoneRepositoryIn } from './repositories/testStoneRepository.ts';
import { type WorkRepository, workRepositoryIn } from './repositories/workRepository.ts';

/** The rows that a decision reads and writes. */
export interface KeptRecords {
  readonly stones: StoneRepository;
  readonly works: WorkRepository;
  readonly plans: PlanRepository;
  readonly runs: RunRepository;
  readonly folds: FoldRepository;
  readonly pulls: PullRepository;
  readonly pullMeasurings: PullMeasuringRepository;
  readonly series: SeriesRepository;
  readonly testStones: TestStoneRepository;
  readonly testPlans: TestPlanRepository;
  readonly editions: EditionRepository;
  readonly ledgers: LedgerRepository;
  readonly etchTables: EtchTableRepository;
  readonly media: MediumRepository;
  readonly batches: BatchRepository;
  readonly kit: KitRepository;
  readonly inks: InkRepository;
  readonly materials: MaterialRepository;
  readonly reports: ReportRepository;
  readonly foreignProtocols: ForeignProtocolRepository;
  readonly photographs: PhotographRepository;
  readonly studio: StudioRepository;
  readonly deadlines: DeadlineRepository;
  readonly devices: DeviceRepository;
}

/**
 * Runs one decision in one transaction. A failure, like a thrown error, leaves everything as it was.
 * Inside, only the records that are handed in may be used: the database has one connection.
 */
export type Decide = <T, E>(
  decision: (records: KeptRecords) => Promise<Result<T, E>>,
) => Promise<Result<T, E>>;

/** The records of an open database or of a transaction. */
export function keptRecordsIn(database: Kysely<Tables>): KeptRecords {
  return {
    stones: stoneRepositoryIn(database),
    works: workRepositoryIn(database),
    plans: planRepositoryIn(database),
    runs: runRepositoryIn(database),
    folds: foldRepositoryIn(database),
    pulls: pullRepositoryIn(database),
    pullMeasurings: pullMeasuringRepositoryIn(database),
    series: seriesRepositoryIn(database),
    testStones: testStoneRepositoryIn(database),
    testPlans: testPlanRepositoryIn(database),
    editions: editionRepositoryIn(database),
    ledgers: ledgerRepositoryIn(database),
    etchTables: etchTableRepositoryIn(database),
    media: mediumRepositoryIn(database),
    batches: batchRepositoryIn(database),
    kit: kitRepositoryIn(database),
    inks: inkRepositoryIn(database),
    materials: materialRepositoryIn(database),
    reports: reportRepositoryIn(database),
    foreignProtocols: foreignProtocolRepositoryIn(database),
    photographs: photographRepositoryIn(database),
    studio: studioRepositoryIn(database),
    deadlines: deadlineRepositoryIn(database),
    devices: deviceRepositoryIn(database),
  };
}

/** Decisions over an open database. */
export function decideIn(database: Kysely<Tables>): Decide {
  return async (decision) => {
    const undo = new Error('undo');
    let outcome: Awaited<ReturnType<typeof decision>> | null = null;
    try {
      await database.transaction().execute(async (transaction) => {
        outcome = await decision(keptRecordsIn(transaction));
        if (!outcome.ok) throw undo;
      });
    } catch (error) {
      if (error !== undo) throw error;
    }
    return outcome!;
  };
}
