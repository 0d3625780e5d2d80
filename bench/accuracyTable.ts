import type { BenchPair } from './benchPair.ts';
import type { AccuracyLimits } from './limits.ts';
import { type PairScore, quantile } from './scorePair.ts';

/** One scored case, as the table takes it in. */
export interface ScoredCase {
  readonly pair: Pick<BenchPair, 'name' | 'kind' | 'truth' | 'maps'>;
  readonly score: PairScore;
  readonly seconds: number;
  /** Median difference of zone coverage between two set-ups of the same object; null where not done. */
  readonly repeatDifference: number | null;
}

export interface TableLine {
  readonly what: string;
  readonly reached: string;
  readonly limit: string;
  /** Null where no case of this run says anything about it. */
  readonly passed: boolean | null;
}

/** A map needs this many sure cells (2 per mm, so 100 mm²) in a case before its overlap is judged. */
const leastSureCells = 400;

/** The measures over all cases, each against its limit. */
export function accuracyTable(all: readonly ScoredCase[], limits: AccuracyLimits): TableLine[] {
  const cases = all.filter(({ pair }) => pair.kind !== 'spoiled');
  const usual = cases.filter(({ pair }) => pair.kind !== 'scan');
  const scans = cases.filter(({ pair }) => pair.kind === 'scan');
  const framed = cases.filter(({ pair }) => pair.kind !== 'no corners');
  const onCurve = framed.filter(({ pair }) => pair.kind === 'curve without chips');
  const calibrated = framed.filter(({ pair }) => pair.kind !== 'curve without chips');
  const medians = registrations(usual).map(({ median }) => median);
  const unchanged = cases.filter(({ pair }) => pair.kind === 'no change');
  return [
    atMost('registration, median over cases, mm', quantile(medians, 0.5), limits.medianOverCases),
    atMost('registration, worst median, mm', most(medians), limits.worstMedian),
    atMost('registration, worst p90, mm', most(registrations(usual).map(({ p90 }) => p90)), limits.worstP90),
    atMost(
      'scans: worst median, mm',
      most(registrations(scans).map(({ median }) => median)),
      limits.scanMedian,
    ),
    atMost('scans: worst p90, mm', most(registrations(scans).map(({ p90 }) => p90)), limits.scanP90),
    statedResidual(cases, 'median', 0.5, 2),
    statedResidual(cases, 'p90', 1 / 3, 2),
    atMost('coverage error, drawn', meanError(calibrated, 'drawnError'), limits.coverageError),
    atMost('coverage error, printed', meanError(calibrated, 'printedError'), limits.coverageError),
    atMost('on a curve without chips, drawn', meanError(onCurve, 'drawnError'), limits.coverageErrorOnCurve),
    atMost(
      'on a curve without chips, printed',
      meanError(onCurve, 'printedError'),
      limits.coverageErrorOnCurve,
    ),
    ...intervalLines(framed, limits),
    ...(['lost', 'filled', 'scum'] as const).map((kind) => overlapLine(framed, kind, limits.overlap)),
    atMost(
      'claimed where nothing changed',
      most(unchanged.map(({ score }) => score.claimed)),
      limits.noChangeClaimed,
    ),
    atMost(
      'two set-ups agree within, median',
      most(cases.map(({ repeatDifference }) => repeatDifference)),
      limits.repeatDifference,
    ),
    share(
      'verdicts right',
      all.map(({ score }) => score.verdictRight),
    ),
    share(
      'expected warnings given',
      all.map(({ score }) => score.missingWarnings.length === 0),
    ),
    share(
      'nothing else warned of',
      all.map(({ score }) => score.falseWarnings.length === 0),
    ),
  ];
}

function registrations(cases: readonly ScoredCase[]) {
  return cases.flatMap(({ score }) => (score.registration ? [score.registration] : []));
}

function most(values: readonly (number | null)[]): number {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? Number.NaN : Math.max(...known);
}

function atMost(what: string, reached: number, limit: number): TableLine {
  const known = Number.isFinite(reached);
  return {
    what,
    reached: known ? reached.toFixed(4) : '–',
    limit: `≤ ${limit}`,
    passed: known ? reached <= limit : null,
  };
}

function share(what: string, right: readonly boolean[]): TableLine {
  const count = right.filter(Boolean).length;
  return { what, reached: `${count} of ${right.length}`, limit: 'all', passed: count === right.length };
}

function statedResidual(
  cases: readonly ScoredCase[],
  which: 'median' | 'p90',
  least: number,
  greatest: number,
) {
  const right = cases.flatMap(({ score }) => {
    if (!score.registration || !score.stated) return [];
    const ratio = score.stated[which] / score.registration[which];
    return [ratio >= least && ratio <= greatest];
  });
  return share(`stated ${which} residual within ${least.toFixed(2)} to ${greatest} of the true`, right);
}

function meanError(cases: readonly ScoredCase[], which: 'drawnError' | 'printedError'): number {
  const errors = cases.flatMap(({ score }) =>
    score.zones.flatMap((zone) => (zone[which] === null ? [] : [Math.abs(zone[which])])),
  );
  return errors.length === 0 ? Number.NaN : errors.reduce((sum, error) => sum + error, 0) / errors.length;
}

function intervalLines(cases: readonly ScoredCase[], limits: AccuracyLimits): TableLine[] {
  const intervals = cases.flatMap(({ score }) => score.zones.flatMap((zone) => zone.intervals));
  const holding = intervals.filter((interval) => interval.holds).length / intervals.length;
  const known = intervals.length > 0;
  return [
    {
      what: '95 % intervals that hold the truth',
      reached: known ? holding.toFixed(3) : '–',
      limit: `≥ ${limits.intervalsHold}`,
      passed: known ? holding >= limits.intervalsHold : null,
    },
    atMost(
      'their median width',
      quantile(
        intervals.map(({ width }) => width),
        0.5,
      ),
      limits.intervalWidth,
    ),
  ];
}

/** Overlap over all judged cells of the run, with the worst case beside it. */
function overlapLine(
  cases: readonly ScoredCase[],
  kind: 'lost' | 'filled' | 'scum',
  limit: number,
): TableLine {
  const judged = cases.flatMap(({ pair, score }) => {
    const sure = pair.maps[kind].reduce((sum, cell) => sum + (cell === 255 ? 1 : 0), 0);
    return score.overlap && sure >= leastSureCells ? [{ name: pair.name, ...score.overlap[kind] }] : [];
  });
  const both = judged.reduce((sum, { both }) => sum + both, 0);
  const either = judged.reduce((sum, { either }) => sum + either, 0);
  const worst = [...judged].sort((a, b) => a.both / a.either - b.both / b.either)[0];
  return {
    what: `overlap, ${kind}${worst ? ` (worst ${(worst.both / worst.either).toFixed(2)}, ${worst.name})` : ''}`,
    reached: judged.length > 0 ? (both / either).toFixed(3) : '–',
    limit: `≥ ${limit}`,
    passed: judged.length > 0 ? both / either >= limit : null,
  };
}

/** One line about one case: what it reached, and what was wrong. */
export function caseLine({ pair, score, seconds, repeatDifference }: ScoredCase): string {
  const number = (value: number | null | undefined, digits: number) =>
    value === null || value === undefined || Number.isNaN(value) ? '–' : value.toFixed(digits);
  const errors = (which: 'drawnError' | 'printedError') => {
    const known = score.zones.flatMap((zone) => (zone[which] === null ? [] : [Math.abs(zone[which])]));
    return known.length ? known.reduce((sum, error) => sum + error, 0) / known.length : null;
  };
  const intervals = score.zones.flatMap((zone) => zone.intervals);
  const overlap = (kind: 'lost' | 'filled' | 'scum') => {
    const cells = score.overlap?.[kind];
    return cells && cells.either > 0 ? number(cells.both / cells.either, 2) : '–';
  };
  const wrong = [
    score.verdictRight ? '' : 'WRONG VERDICT',
    ...score.missingWarnings.map((code) => `missing ${code}`),
    ...score.falseWarnings.map((code) => `false ${code}`),
    ...score.zones.filter((zone) => zone.changeRight === false).map((zone) => `change of ${zone.id}`),
  ].filter(Boolean);
  return [
    pair.name.padEnd(20),
    `reg ${number(score.registration?.median, 4)}/${number(score.registration?.p90, 3)}`,
    `stated ${number(score.stated?.median, 4)}/${number(score.stated?.p90, 3)}`,
    `err ${number(errors('drawnError'), 4)}/${number(errors('printedError'), 4)}`,
    `held ${intervals.filter(({ holds }) => holds).length}/${intervals.length}`,
    `width ${number(
      quantile(
        intervals.map(({ width }) => width),
        0.5,
      ),
      3,
    )}`,
    `IoU ${overlap('lost')} ${overlap('filled')} ${overlap('scum')}`,
    `claimed ${number(score.claimed === null ? null : score.claimed * 100, 2)} %`,
    ...(repeatDifference === null ? [] : [`again ${number(repeatDifference, 4)}`]),
    `${seconds.toFixed(1)} s`,
    wrong.join(', '),
  ].join('  ');
}
