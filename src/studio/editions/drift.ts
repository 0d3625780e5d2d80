import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import { type IndividualsChart, individualsChart } from '../../science/statistics/individualsChart.ts';
import { type RunRule, runRules } from '../../science/statistics/runRules.ts';

/** Under so many prints a chart says nothing, and only the distance from the approval proof is shown. */
export const fewestForChart = 8;

/** One impression beside the approval proof: its darkness less the approval proof's, by tone; null where not read. */
export interface EditionPull extends Readonly<Record<SeriesTone, number | null>> {
  readonly n: number;
  /** 95 % ranges of the same; null where it was typed. */
  readonly ranges?: Readonly<Record<SeriesTone, DistanceRange | null>>;
}

/** Low and high, darkness. */
export type DistanceRange = readonly [low: number, high: number];

/** One tone of an edition. */
export interface ToneDrift {
  readonly tone: SeriesTone;
  /** Distances from the approval proof, in order. */
  readonly distances: readonly {
    readonly n: number;
    readonly distance: number;
    /** 95 % of one reading by photograph; null where it was typed. */
    readonly range: DistanceRange | null;
  }[];
  /** null under eight prints. */
  readonly chart: IndividualsChart | null;
  /** What a printer would look into, in the order of the prints. */
  readonly noticed: readonly DriftNotice[];
}

/** What chance alone seldom makes of prints, said at the print that completed it. */
export interface DriftNotice {
  readonly n: number;
  readonly rule: RunRule | 'range';
  /** A whole sentence, with what to try first. */
  readonly words: string;
}

/**
 * How far an edition has drifted: distances from the approval proof; from eight prints on an individuals and moving-range
 * chart with published constants and run rules, what they notice told as a printer would.
 * @param pulls in any order, of one paper and one age.
 */
export function editionDrift(pulls: readonly EditionPull[]): ToneDrift[] {
  const ordered = [...pulls].sort((one, other) => one.n - other.n);
  return seriesTones.map((tone) => {
    const distances = ordered.flatMap((pull) =>
      pull[tone] === null ? [] : [{ n: pull.n, distance: pull[tone], range: pull.ranges?.[tone] ?? null }],
    );
    const values = distances.map(({ distance }) => distance);
    const chart = values.length < fewestForChart ? null : individualsChart(values);
    return { tone, distances, chart, noticed: chart ? noticedIn(tone, distances, chart) : [] };
  });
}

function noticedIn(
  tone: SeriesTone,
  distances: ToneDrift['distances'],
  chart: IndividualsChart,
): DriftNotice[] {
  // Values that never change have no deviation to be measured in.
  if (!(chart.deviation > 0)) return [];
  const scores = distances.map(({ distance }) => (distance - chart.mean) / chart.deviation);
  const runs = runRules(scores).map(({ rule, at }) => ({
    n: distances[at]!.n,
    rule,
    words: runWords(
      tone,
      rule,
      distances[at]!.n,
      rule === 3 ? scores[at]! > scores[at - 1]! : scores[at]! > 0,
    ),
  }));
  const jumps = chart.movingRanges.flatMap((range, i) =>
    range > chart.upperRange
      ? [
          {
            n: distances[i + 1]!.n,
            rule: 'range' as const,
            words: `Print ${distances[i + 1]!.n}: its ${tone} are further from those of the print before than neighbours differ: what was changed?`,
          },
        ]
      : [],
  );
  return [...runs, ...jumps].sort((one, other) => one.n - other.n);
}

/** What is tried first; common practice, no source. */
const advice: Readonly<Record<SeriesTone, readonly [up: string, down: string]>> = {
  lights: [
    'wipe the bare stone with clean water and look for tint',
    'look whether the lights still take ink',
  ],
  middles: ['ease the charge', 'charge evenly, then look at packing and pressure'],
  darks: ['ease the charge', 'charge again, then look at pressure'],
};

function runWords(tone: SeriesTone, rule: RunRule, n: number, up: boolean): string {
  const side = up ? 'darker' : 'paler';
  const then = advice[tone][up ? 0 : 1];
  switch (rule) {
    case 1:
      return `Print ${n}: its ${tone} are ${side} by more than these prints differ: ${then}.`;
    case 2:
      return `Print ${n}: the ninth in a row with ${side} ${tone} than most: ${then}.`;
    case 3:
      return `Print ${n}: the ${tone} came out ${side} six times running: ${then}.`;
    case 4:
      return `Print ${n}: the ${tone} have gone up and down by turns for fourteen prints: do two people or two rollers take turns?`;
    case 5:
      return `Print ${n}: of the last three, two have far ${side} ${tone}: ${then}.`;
    case 6:
      return `Print ${n}: of the last five, four have ${side} ${tone}: ${then}.`;
    case 7:
      return `Print ${n}: the ${tone} of fifteen prints lie closer together than before: was something made better, or not measured anew?`;
    case 8:
      return `Print ${n}: for eight prints no ${tone} have come out in the middle: do two ways of working mix?`;
    default:
      return rule satisfies never;
  }
}
