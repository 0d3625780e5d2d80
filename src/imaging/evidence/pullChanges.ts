import type { EvidenceCells } from '../../records/evidence.ts';
import type { FeatureReading, SeriesFeature } from '../../records/suspects.ts';
import { median } from '../../science/statistics/quantile.ts';
import { bareUpTo } from './evidenceGrid.ts';
import { coverageKept } from './keptCells.ts';
import { mean, standardError } from './means.ts';
import { reading } from './reading.ts';

const fewestCells = 7;
/** Lighter work is not asked whether it is missing. */
const leastDrawn = 0.06;
/** Missing places of fewer cells say nothing about whether they stay. */
const fewestMissing = 2;
/** Neighbouring cells of one patch come and go together. */
const togetherCells = 1.5;
/** Two photographs of one sheet differ by about so much in bare ground, which shifts it as a whole. */
const groundDoubt = 0.005;
/** A place is missing where it prints less than this share of what was drawn. */
export const missingShare = 0.5;

/**
 * What changed between an earlier and a later pull of one stone. `patchesStay`: share of what was missing that is missing again
 * at the same place; `lightsReturn`: by which share of themselves the lights came back; `bareGrows`, `darksGrow`: change of coverage.
 * `missingGrows` takes more than two pulls (`seriesChanges`): null.
 * @returns null features where too little is there to say; null altogether for two stones that differ in size.
 */
export function pullChanges(
  earlier: EvidenceCells,
  later: EvidenceCells,
): Readonly<Record<SeriesFeature, FeatureReading | null>> | null {
  if (earlier.columns !== later.columns || earlier.rows !== later.rows) return null;
  const lights: [number, number][] = [];
  const bare: number[] = [];
  const darks: number[] = [];
  for (let cell = 0; cell < earlier.drawn.length; cell++) {
    const kept = [earlier.drawn[cell], earlier.printed[cell], later.printed[cell]] as const;
    if (kept[0] == null || kept[1] == null || kept[2] == null) continue;
    const d = kept[0] * coverageKept.drawn;
    const [p, q] = [kept[1] * coverageKept.printed, kept[2] * coverageKept.printed];
    if (d <= bareUpTo) bare.push(q - p);
    else if (d >= leastDrawn && d <= 0.3) lights.push([q - p, d]);
    else if (d >= 0.55 && d <= 0.92) darks.push(q - p);
  }
  const told = (values: readonly number[], floor: number) =>
    values.length < fewestCells ? null : reading(mean(values), Math.hypot(standardError(values), floor));
  // Grey that grows everywhere brings no lights back.
  const greyer = bare.length < fewestCells ? 0 : Math.max(0, median(bare));
  return {
    patchesStay: patchesStay(missingAgain(earlier, later)),
    lightsReturn: told(
      lights.map(([change, d]) => (change - greyer * (1 - d)) / d),
      0.03,
    ),
    bareGrows: told(bare, groundDoubt),
    darksGrow: told(darks, 0.008),
    missingGrows: null,
  };
}

/** How many cells of the drawing are missing on the earlier of two pulls, and how many of these on both. */
export interface FoundMissing {
  readonly first: number;
  readonly both: number;
}

/** Counts what is missing on an earlier pull, and again on a later one of the same size. */
export function missingAgain(earlier: EvidenceCells, later: EvidenceCells): FoundMissing {
  const missing = { first: 0, both: 0 };
  for (let cell = 0; cell < earlier.drawn.length; cell++) {
    const kept = [earlier.drawn[cell], earlier.printed[cell], later.printed[cell]] as const;
    if (kept[0] == null || kept[1] == null || kept[2] == null) continue;
    const least = missingShare * kept[0] * coverageKept.drawn;
    if (least < missingShare * leastDrawn || kept[1] * coverageKept.printed >= least) continue;
    missing.first++;
    if (kept[2] * coverageKept.printed < least) missing.both++;
  }
  return missing;
}

/** Share of what was missing that is missing again; null where next to nothing was. */
export function patchesStay({ first, both }: FoundMissing): FeatureReading | null {
  if (first < fewestMissing) return null;
  const share = both / first;
  return reading(share, Math.sqrt((share * (1 - share) * togetherCells) / first) + 0.03);
}
