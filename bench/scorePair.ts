import type { ComparisonRecord, CoverageInterval } from '../src/records/comparison.ts';
import type { BenchPair } from './benchPair.ts';
import { greyOf } from './pairFolder.ts';
import { truthField } from './truthInterpolation.ts';

/** The part of a measurement that is scored; the opponent's answers are brought into the same form. */
export interface ScoredRecord {
  readonly verdict: ComparisonRecord['verdict'];
  readonly warnings: readonly { readonly code: string }[];
  readonly registration: Pick<NonNullable<ComparisonRecord['registration']>, 'residualMm' | 'samples'> | null;
  readonly zones: readonly {
    readonly id: string;
    readonly drawn: CoverageInterval | null;
    readonly printed: CoverageInterval | null;
    readonly change: ComparisonRecord['zones'][number]['change'] | null;
  }[];
  readonly maps: Pick<NonNullable<ComparisonRecord['maps']>, 'lost' | 'filled' | 'scum'> | null;
}

export interface Scorable {
  readonly record: ScoredRecord;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** Cells of truth and claim of one kind of change over the sure cells. */
export interface Overlap {
  readonly both: number;
  readonly either: number;
}

export interface ZoneScore {
  readonly id: string;
  readonly drawnError: number;
  readonly printedError: number | null;
  /** One entry for each stated interval: does it hold the truth, and how wide is it. */
  readonly intervals: readonly { readonly holds: boolean; readonly width: number }[];
  /** Whether the change agrees with a sure truth; null where the truth is a matter of definition. */
  readonly changeRight: boolean | null;
}

export interface PairScore {
  readonly verdictRight: boolean;
  readonly missingWarnings: readonly string[];
  readonly falseWarnings: readonly string[];
  /** Errors of the samples on the sheet, mm; null where nothing was measured. */
  readonly registration: { readonly median: number; readonly p90: number; readonly samples: number } | null;
  readonly stated: { readonly median: number; readonly p90: number } | null;
  readonly zones: readonly ZoneScore[];
  readonly overlap: Readonly<Record<'lost' | 'filled' | 'scum', Overlap>> | null;
  /** Share of the work rectangle claimed as changed in any way. */
  readonly claimed: number | null;
}

/** Compares a measured pair with its truth. Where it was refused only verdict and warnings are scored. */
export async function scorePair(pair: BenchPair, measured: Scorable): Promise<PairScore> {
  const { record } = measured;
  const { truth } = pair;
  const warned = new Set<string>(record.warnings.map((warning) => warning.code));
  const expected = new Set<string>(truth.warnings);
  const measuredBoth = record.verdict === 'ok' && truth.verdict === 'ok';
  const maps = measuredBoth ? await changeScore(pair, measured) : null;
  return {
    verdictRight: record.verdict === truth.verdict,
    missingWarnings: [...expected].filter((code) => !warned.has(code)),
    falseWarnings: [...warned].filter((code) => !expected.has(code)),
    registration: measuredBoth ? registrationScore(pair, record) : null,
    stated: record.registration?.residualMm ?? null,
    zones: measuredBoth ? zoneScores(pair, record) : [],
    overlap: maps?.overlap ?? null,
    claimed: maps?.claimed ?? null,
  };
}

function registrationScore(pair: BenchPair, record: ScoredRecord): PairScore['registration'] {
  const field = truthField(pair.truth.grid);
  const errors: number[] = [];
  for (const sample of record.registration?.samples ?? []) {
    const truth = field.proofOf(sample.stonePx);
    if (!truth?.onSheet) continue;
    const [dx, dy] = [sample.proofPx[0] - truth.proofPx[0], sample.proofPx[1] - truth.proofPx[1]];
    errors.push(Math.hypot(dx, dy) / truth.pxPerMm);
  }
  return errors.length === 0
    ? null
    : { median: quantile(errors, 0.5), p90: quantile(errors, 0.9), samples: errors.length };
}

function zoneScores(pair: BenchPair, record: ScoredRecord): ZoneScore[] {
  const scores: ZoneScore[] = [];
  for (const truth of pair.truth.zones) {
    const zone = record.zones.find((candidate) => candidate.id === truth.id);
    if (!zone?.drawn) continue;
    const interval = (stated: { low: number; high: number }, value: number) => ({
      holds: stated.low <= value && value <= stated.high,
      width: stated.high - stated.low,
    });
    const printed =
      zone.printed && truth.printed !== null ? { stated: zone.printed, truth: truth.printed } : null;
    scores.push({
      id: truth.id,
      drawnError: zone.drawn.coverage - truth.drawn,
      printedError: printed ? printed.stated.coverage - printed.truth : null,
      intervals: [
        interval(zone.drawn, truth.drawn),
        ...(printed ? [interval(printed.stated, printed.truth)] : []),
      ],
      changeRight:
        truth.change === null || zone.change === null || zone.printed === null
          ? null
          : zone.change === truth.change,
    });
  }
  return scores;
}

async function changeScore(pair: BenchPair, measured: Scorable) {
  const { maps } = measured.record;
  if (!maps) return null;
  const { columns, rows } = pair.maps;
  const overlap: Record<'lost' | 'filled' | 'scum', Overlap> = {
    lost: { both: 0, either: 0 },
    filled: { both: 0, either: 0 },
    scum: { both: 0, either: 0 },
  };
  const anywhere = new Uint8Array(columns * rows);
  for (const kind of ['lost', 'filled', 'scum'] as const) {
    const picture = await greyOf(measured.files.get(maps[kind])!, maps[kind]);
    let both = 0;
    let either = 0;
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const x = Math.min(picture.widthPx - 1, Math.floor(((column + 0.5) / columns) * picture.widthPx));
        const y = Math.min(picture.heightPx - 1, Math.floor(((row + 0.5) / rows) * picture.heightPx));
        const claimed = picture.codes[y * picture.widthPx + x]! >= 128;
        const cell = row * columns + column;
        if (claimed) anywhere[cell] = 1;
        const truth = pair.maps[kind][cell]!;
        if (truth === 128) continue;
        if (claimed && truth === 255) both++;
        if (claimed || truth === 255) either++;
      }
    overlap[kind] = { both, either };
  }
  return { overlap, claimed: anywhere.reduce((sum, cell) => sum + cell, 0) / anywhere.length };
}

/** Quantile by linear interpolation between order statistics; NaN for none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const low = Math.floor(place);
  const high = Math.ceil(place);
  return sorted.length === 0 ? Number.NaN : sorted[low]! + (sorted[high]! - sorted[low]!) * (place - low);
}
