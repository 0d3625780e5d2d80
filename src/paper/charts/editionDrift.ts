import { fewestForChart, type ToneDrift } from '../../studio/editions/drift.ts';
import { asWritten } from '../../words/asWritten.ts';
import { textInWords } from '../../words/inWords.ts';
import { chartFont, chartInk, svgText } from './chartInk.ts';

export interface EditionDriftOptions {
  /** Width of the picture in px. Default 700; phones 340. */
  readonly width?: number;
}

const panel = { height: 118, ranges: 54, gap: 26, head: 18 };
const left = 40;
const meanLetterPx = 6.6;
/** The least half height of a panel, darkness, so that noise is not blown up to a storm. */
const leastReach = 0.02;

/**
 * Drift of an edition as one SVG: for each tone the distance of every print from the approval proof; from eight prints on
 * also the mean, limits at three standard deviations and, below, the ranges between neighbours with their limit. Alarms
 * carry numbers. Tones that nobody read are left out.
 */
export function editionDriftSvg(drifts: readonly ToneDrift[], options: EditionDriftOptions = {}): string {
  const width = options.width ?? 700;
  const read = drifts.filter(({ distances }) => distances.length > 0);
  if (read.length === 0) {
    const none = text(0, 20, 'No print was read beside the approval proof yet.', chartInk.soft, 13);
    return picture(width, 30, 'Drift: nothing read', none);
  }
  const numbers = read.flatMap(({ distances }) => distances.map(({ n }) => n));
  const [first, last] = [Math.min(...numbers), Math.max(...numbers)];
  const across = (n: number) =>
    round(left + 10 + ((n - first) / Math.max(1, last - first)) * (width - left - 24));
  let top = 0;
  const body = read.map((drift) => {
    const svg = `<g transform="translate(0 ${top})">${toneSvg(drift, across, width, numbering(read, drift))}</g>`;
    top += panel.head + panel.height + (drift.chart ? panel.ranges : 0) + panel.gap;
    return svg;
  });
  const key = keyWords(read, width).map((line, index) =>
    text(0, top + 8 + 16 * index, asWritten(line), chartInk.soft, 12),
  );
  return picture(width, top + 16 * key.length + 4, driftWords(read), body.join('') + key.join(''));
}

/** The picture in a sentence, for who can't see it. */
function driftWords(read: readonly ToneDrift[]): string {
  const said = read.map(({ tone, alarms, chart }) =>
    chart === null ? `${tone}: distances only` : `${tone}: ${alarms.length} alarms`,
  );
  return `Drift from the approval proof; ${said.join('; ')}`;
}

/** Alarms are numbered through all tones in the order in which a list beside the picture has them. */
function numbering(read: readonly ToneDrift[], drift: ToneDrift): number {
  return read.slice(0, read.indexOf(drift)).reduce((sum, { alarms }) => sum + alarms.length, 0);
}

function toneSvg(
  { tone, distances, chart, alarms }: ToneDrift,
  across: (n: number) => number,
  width: number,
  alarmsBefore: number,
): string {
  const reach = Math.max(
    leastReach,
    ...distances.flatMap(({ distance, range }) => [distance, ...(range ?? [])].map(Math.abs)),
    ...(chart ? [Math.abs(chart.lower), Math.abs(chart.upper)] : []),
  );
  const middle = panel.head + panel.height / 2;
  const up = (distance: number) => round(middle - (distance / reach) * (panel.height / 2 - 8));
  const level = (distance: number, dash: string, weight: number) =>
    `<path d="M${left} ${up(distance)}H${width - 8}" stroke="${chartInk.ink}" stroke-width="${weight}"` +
    ` stroke-dasharray="${dash}" fill="none"/>`;
  const dots = distances.map(({ n, distance, range }) => {
    const [x, y] = [across(n), up(distance)];
    if (!range)
      return `<circle cx="${x}" cy="${y}" r="3.2" fill="#fff" stroke="${chartInk.ink}" stroke-width="1.4"/>`;
    const bar = `<path d="M${x} ${up(range[0])}V${up(range[1])}" stroke="${chartInk.ink}" stroke-width="1.2"/>`;
    return `${bar}<circle cx="${x}" cy="${y}" r="3.2" fill="${chartInk.ink}"/>`;
  });
  const marks = [...new Set(alarms.map(({ n }) => n))].map((n) => {
    const { distance, range } = distances.find((one) => one.n === n)!;
    const told = alarms.flatMap((one, index) => (one.n === n ? [alarmsBefore + index + 1] : []));
    const x = across(n);
    const top = Math.min(up(range?.[1] ?? distance) - 4, up(distance) - 10);
    return (
      `<circle cx="${x}" cy="${up(distance)}" r="7" fill="none" stroke="${chartInk.tannin}" stroke-width="1.8"/>` +
      text(x, top, numbersOf(told), chartInk.tannin, 12, 'middle', true)
    );
  });
  return (
    text(0, 13, tone, chartInk.ink, 14, 'start', true) +
    level(0, '', 1.2) +
    (chart
      ? level(chart.mean, '7 4', 0.9) + level(chart.lower, '2 3', 0.9) + level(chart.upper, '2 3', 0.9)
      : '') +
    [reach, 0, -reach]
      .map((at) => text(left - 5, up(at) + 4, at === 0 ? '0' : signed(at), chartInk.soft, 11, 'end'))
      .join('') +
    dots.join('') +
    marks.join('') +
    (chart
      ? rangesSvg(distances, chart, across, width)
      : numbersSvg(distances, across, panel.head + panel.height + 12))
  );
}

/** Alarms of one print follow one another. */
function numbersOf(told: readonly number[]): string {
  return told.length > 1 ? `${told[0]}–${told.at(-1)}` : String(told[0]);
}

function rangesSvg(
  distances: ToneDrift['distances'],
  chart: NonNullable<ToneDrift['chart']>,
  across: (n: number) => number,
  width: number,
): string {
  const top = panel.head + panel.height + 8;
  const foot = top + panel.ranges - 16;
  const most = Math.max(chart.upperRange, ...chart.movingRanges, 1e-6);
  const up = (range: number) => round(foot - (range / most) * (foot - top));
  const bars = chart.movingRanges.map((range, index) => {
    const x = across(distances[index + 1]!.n);
    return `<path d="M${x} ${foot}V${up(range)}" stroke="${chartInk.ink}" stroke-width="3"/>`;
  });
  return (
    `<path d="M${left} ${foot}H${width - 8}" stroke="${chartInk.ink}" stroke-width="0.8"/>` +
    `<path d="M${left} ${up(chart.upperRange)}H${width - 8}" stroke="${chartInk.ink}" stroke-width="0.9" stroke-dasharray="2 3"/>` +
    bars.join('') +
    text(left - 5, foot, 'range', chartInk.soft, 11, 'end') +
    numbersSvg(distances, across, foot + 13)
  );
}

/** As many numbers as there is room for. */
function numbersSvg(distances: ToneDrift['distances'], across: (n: number) => number, y: number): string {
  let free = Number.NEGATIVE_INFINITY;
  return distances
    .map(({ n }) => {
      const x = across(n);
      if (x - free < 18) return '';
      free = x;
      return text(x, y, String(n), chartInk.soft, 11, 'middle');
    })
    .join('');
}

function keyWords(read: readonly ToneDrift[], width: number): readonly string[] {
  const few = `Under ${fewestForChart} prints there are distances only.`;
  const words = ['Line at 0: the approval proof. Darkness, more is darker.'];
  if (read.some(({ chart }) => chart)) {
    words.push('Dashed: mean. Dotted: three standard deviations.');
  }
  if (read.some(({ chart }) => !chart)) words.push(few);
  const all = read.flatMap(({ distances }) => distances);
  if (all.some(({ range }) => range)) words.push('Dot and bar: a photograph and its 95 % range.');
  if (all.some(({ range }) => !range)) words.push('Ring: typed.');
  return wrapped(words.flatMap((line) => line.split(/(?<=\.) /)).map(textInWords), width);
}

/** As many sentences to a line as have room, by a mean letter of 12 px. */
function wrapped(sentences: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences) {
    const longer = lines.length === 0 ? sentence : `${lines.at(-1)} ${sentence}`;
    if (lines.length > 0 && longer.length * meanLetterPx <= width) lines[lines.length - 1] = longer;
    else lines.push(sentence);
  }
  return lines;
}

function signed(value: number): string {
  return `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
}

function text(
  x: number,
  y: number,
  words: string,
  fill: string,
  size: number,
  anchor = 'start',
  bold = false,
): string {
  return (
    `<text x="${x}" y="${y}" font-size="${size}" text-anchor="${anchor}" fill="${fill}"` +
    `${bold ? ' font-weight="bold"' : ''}>${svgText(words)}</text>`
  );
}

function picture(width: number, height: number, name: string, body: string): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"` +
    ` role="img" aria-label="${svgText(name)}" ${chartFont}>${body}</svg>`
  );
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
