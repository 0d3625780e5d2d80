import type { EvidenceCells } from '../../records/evidence.ts';
import type { FeatureReading, SeriesFeature } from '../../records/suspects.ts';
import { median } from '../../science/statistics/quantile.ts';
import { bareUpTo } from './evidenceGrid.ts';
import { coverageKept } from './keptCells.ts';
import { mean, standardError } from './means.ts';
import { reading } from './reading.ts';

const fewestCells = 7;
/** Missing places of fewer cells say nothing about whether they stay. */
const fewestMissing = 2;
/** Neighbouring cells of one patch come and go together. */
const togetherCells = 1.5;
/** Two photographs of one sheet differ by about so much in bare ground, which shifts it as a whole. */
const groundDoubt = 0.005;
/** A place is missing where it prints less than this share of what was drawn. */
const missingShare = 0.5;

/**
 * What changed between an earlier and a later pull of one stone. `patchesStay`: share of what was missing that is missing again
 * at the same place; `lightsReturn`: by which share of themselves the lights came back; `bareGrows`, `darksGrow`: change of coverage.
 * @returns null features where too little is there to say; null altogether for two stones that differ in size.
 */
export function pullChanges(
  earlier: EvidenceCells,
  later: EvidenceCells,
): Readonly<Record<SeriesFeature, FeatureReading | null>> | null {
  if (earlier.columns !== later.columns || earlier.rows !== later.rows) return null;
  const missing = { first: 0, both: 0 };
  const lights: [number, number][] = [];
  const bare: number[] = [];
  const darks: number[] = [];
  for (let cell = 0; cell < earlier.drawn.length; cell++) {
    const kept = [earlier.drawn[cell], earlier.printed[cell], later.printed[cell]] as const;
    if (kept[0] == null || kept[1] == null || kept[2] == null) continue;
    const d = kept[0] * coverageKept.drawn;
    const [p, q] = [kept[1] * coverageKept.printed, kept[2] * coverageKept.printed];
    if (d <= bareUpTo) bare.push(q - p);
    else if (d >= 0.06 && d <= 0.3) lights.push([q - p, d]);
    else if (d >= 0.55 && d <= 0.92) darks.push(q - p);
    if (d < 0.06) continue;
    if (p < missingShare * d) {
      missing.first++;
      if (q < missingShare * d) missing.both++;
    }
  }
  const told = (values: readonly number[], floor: number) =>
    values.length < fewestCells ? null : reading(mean(values), Math.hypot(standardError(values), floor));
  const share = missing.both / missing.first;
  // Grey that grows everywhere brings no lights back.
  const greyer = bare.length < fewestCells ? 0 : Math.max(0, median(bare));
  return {
    patchesStay:
      missing.first < fewestMissing
        ? null
        : reading(share, Math.sqrt((share * (1 - share) * togetherCells) / missing.first) + 0.03),
    lightsReturn: told(
      lights.map(([change, d]) => (change - greyer * (1 - d)) / d),
      0.03,
    ),
    bareGrows: told(bare, groundDoubt),
    darksGrow: told(darks, 0.008),
  };
}
