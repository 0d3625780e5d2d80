import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { EtchTable, PlanRequest, PlanZone, SetEtch } from '../../records/etch.ts';
import type { PlanChoices } from '../../records/keptPlan.ts';
import type { KeptStone } from '../../records/stoneEntry.ts';
import type { PlannedAs, TestStone } from '../../records/testStone.ts';
import type { Point } from '../../science/geometry/point.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import { etchOfLevel, rowLying } from '../../studio/etch/etchOfLevel.ts';
import { mediumCatalogue } from '../../studio/etch/mediumCatalogue.ts';
import { secondsOfWords } from '../../studio/etch/secondsOfWords.ts';
import { type EtchedAsOne, etchedPlaces } from '../../studio/trials/bench/etchedPlaces.ts';
import { kindOfName } from '../../studio/trials/design/wishOfPlan.ts';
import { requestParts } from '../plan/planWork.ts';

/** What a test stone is etched by, as a plan's request, and where its rectangle lies on the stone. */
export interface BenchRequest {
  readonly request: PlanRequest;
  readonly places: readonly EtchedAsOne[];
  /** Top left corner of the rectangle that it is read in, on the stone. */
  readonly offsetMm: Point;
}

type Records = Pick<KeptRecords, 'etchTables' | 'batches' | 'media'>;

/** What stands for the medium of a zone of a test: its patches differ, and the list says how. */
const testPatches = 'test patches';

/** How a test stone's treatments are given: as planned, else told by their names. */
export function kindsOf({ planned, factors }: TestStone): PlannedAs['kinds'] {
  return planned?.kinds ?? Object.fromEntries(factors.map(({ name }) => [name, kindOfName(name)]));
}

/**
 * What a test stone is etched by on a stone: its zones, each with what the test gives it.
 * @returns `patches-none`, or `reference-unknown` with the field that names nothing
 */
export async function benchRequestOf(
  records: Records,
  stone: TestStone,
  on: KeptStone,
  choices: PlanChoices,
): Promise<Result<BenchRequest>> {
  if (stone.patches.length === 0) return fail(failure('patches-none', { name: stone.name }, 'patches'));
  const parts = await requestParts(records, on, choices);
  if (!parts.ok) return parts;
  const { stoneMm, borderMm } = stone.planned ?? { stoneMm: stone.sizeMm, borderMm: [0, 0] as Point };
  const offsetMm: Point = [
    Math.floor((on.widthMm - stoneMm[0]) / 2) + borderMm[0],
    Math.floor((on.heightMm - stoneMm[1]) / 2) + borderMm[1],
  ];
  const places = etchedPlaces(stone.patches, kindsOf(stone), stone.sizeMm);
  const zones = places.map((place) => zoneOf(place, offsetMm, stone, parts.value.table));
  return ok({ request: { ...parts.value, zones }, places, offsetMm });
}

function zoneOf(place: EtchedAsOne, [left, top]: Point, stone: TestStone, table: EtchTable): PlanZone {
  const { id, name, polygonMm, levels } = place;
  const set = setEtchOf(place, stone, table);
  const zone = { id, name, polygonMm: polygonMm.map(([x, y]): Point => [x + left, y + top]) };
  if (set) return { ...zone, medium: testPatches, set };
  const deposit = (['light', 'middle', 'dark', 'solid', 'wash'] as const).find(
    (one) => one === levels.deposit,
  );
  return { ...zone, medium: mediumIdOf(levels.medium), ...(deposit ? { deposit } : {}) };
}

/** What the test lays here; null where it varies no etch: then the medium decides, as on any work. */
function setEtchOf({ levels }: EtchedAsOne, stone: TestStone, table: EtchTable): SetEtch | null {
  if (levels.etch === undefined) return null;
  const found = etchOfLevel(levels.etch, table, stone.planned?.ownEtches ?? []);
  if (!found) {
    const why = `no rule here: nobody said what “${levels.etch}” is made of`;
    return { row: null, why, bare: false };
  }
  if (found.row === null) return { row: null, why: 'nothing is laid here: the test wants it so', bare: true };
  const seconds = levels.contact === undefined ? null : secondsOfWords(levels.contact);
  const row = seconds === null ? found.row : rowLying(found.row, seconds);
  return { row, why: 'the test’s own', bare: false };
}

function mediumIdOf(level: string | undefined): string {
  const words = level?.trim().toLowerCase() ?? '';
  if (words === '') return testPatches;
  return mediumCatalogue.find(({ id, name }) => id === words || name.toLowerCase() === words)?.id ?? level!;
}
