import type { Measured } from '../../foundation/measured.ts';
import type { WaitKind, WaitVerdict } from '../../records/bench.ts';
import type { Change } from '../../records/comparison.ts';
import type { WaitBand, WaitRecord } from '../../records/rack.ts';
import { wilson } from '../../science/statistics/proportionInterval.ts';
import { waitRange, waitVerdict } from './waitRanges.ts';
import type { WaitTold } from './waitsTold.ts';

/** A wait, and what became of the drawn zones on the print that followed; null where none was measured. */
export interface WaitOutcome extends Pick<WaitTold, 'wait' | 'stage' | 'seconds'> {
  readonly zones: readonly Change[] | null;
}

/** So many waits at least, or the share is unknown. */
const leastWaits = 3;
const level = 0.95;

const names: Readonly<Record<WaitKind, string>> = {
  'first-rest': 'rest after the first etch',
  'acid-rest': 'rest after an acid first etch',
  'under-base': 'wait under base and gum',
  'second-rest': 'rest after a full second etch',
  'quick-etch': 'wait after a quick second etch',
};
const order: readonly WaitKind[] = ['first-rest', 'acid-rest', 'under-base', 'second-rest', 'quick-etch'];

/**
 * How stones printed in this room that were left so long: for each wait, by the verdict that practice gives it, the
 * share of drawn zones that held on the print that followed.
 *
 * Zones of one print share its fate, so that a wait counts as one trial: the interval is Wilson's (1927, doi
 * 10.2307/2276774) over waits, for the next whole number of held ones below and above. It is never narrower than what
 * as many independent trials would give.
 */
export function waitRecords(outcomes: readonly WaitOutcome[]): readonly WaitRecord[] {
  return order
    .map((wait) =>
      recordOf(
        wait,
        outcomes.filter((one) => one.wait === wait),
      ),
    )
    .filter(({ bands, unmeasured }) => bands.length > 0 || unmeasured > 0);
}

function recordOf(wait: WaitKind, outcomes: readonly WaitOutcome[]): WaitRecord {
  const byVerdict = new Map<WaitVerdict, WaitOutcome[]>();
  let unmeasured = 0;
  for (const outcome of outcomes) {
    if (outcome.zones === null) {
      unmeasured++;
      continue;
    }
    const range = waitRange(outcome.stage, wait === 'acid-rest' ? 'acid' : 'unknown', true);
    const verdict = waitVerdict(range, outcome.seconds);
    byVerdict.set(verdict, [...(byVerdict.get(verdict) ?? []), outcome]);
  }
  const bands = [...byVerdict].map(([verdict, waited]) => bandOf(verdict, waited));
  return {
    wait,
    name: names[wait],
    bands: bands.toSorted((a, b) => a.shortestSeconds - b.shortestSeconds),
    unmeasured,
  };
}

function bandOf(verdict: WaitVerdict, waited: readonly WaitOutcome[]): WaitBand {
  const changes = waited.flatMap(({ zones }) => zones ?? []);
  const decided = changes.filter((change) => change !== 'undecided');
  const held = decided.filter((change) => change === 'held').length;
  // a print of which nothing is decided says nothing
  const trials = waited.filter(({ zones }) => zones?.some((change) => change !== 'undecided')).length;
  const seconds = waited.map((one) => one.seconds);
  return {
    verdict,
    waits: trials,
    shortestSeconds: Math.min(...seconds),
    longestSeconds: Math.max(...seconds),
    zones: decided.length,
    held,
    undecided: changes.length - decided.length,
    share: trials < leastWaits ? null : shareOf(held, decided.length, trials),
  };
}

function shareOf(held: number, zones: number, trials: number): Measured {
  const value = held / zones;
  // a hair above a whole number is that number
  const hits = Math.round(value * trials * 1e9) / 1e9;
  return {
    value,
    low: wilson(Math.floor(hits), trials, level).low,
    high: wilson(Math.ceil(hits), trials, level).high,
    basis: 'this room',
    warnings: [],
  };
}
