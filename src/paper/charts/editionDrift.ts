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
 * also how far the prints differ among themselves (three standard deviations, hatched), their mean and, below, the step
 * from each to the next with the largest that neighbours show. Each print is a small sheet; what is told of one in words
 * folds its corner. Tones that nobody read are left out.
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
    const svg = `<g transform="translate(0 ${top})">${toneSvg(drift, across, width)}</g>`;
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
  const said = read.map(({ tone, noticed, chart }) => {
    if (chart === null) return `${tone}: distances only`;
    const prints = [...new Set(noticed.map(({ n }) => n))];
    return prints.length === 0 ? `${tone}: even` : `${tone}: look at ${prints.join(', ')}`;
  });
  return `Drift from the approval proof; ${said.join('; ')}`;
}

function toneSvg(
  { tone, distances, chart, noticed }: ToneDrift,
  across: (n: number) => number,
  width: number,
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
  const folded = new Set(noticed.map(({ n }) => n));
  const sheets = distances.map(({ n, distance, range }) => {
    const [x, y] = [across(n), up(distance)];
    const arm = range
      ? `<path d="M${x} ${up(range[0])}V${up(range[1])}" stroke="${chartInk.ink}" stroke-width="1.2"/>`
      : '';
    return arm + sheetSvg(x, y, range !== null, folded.has(n));
  });
  return (
    text(0, 13, tone, chartInk.ink, 14, 'start', true) +
    level(0, '', 1.2) +
    (chart ? spreadSvg(up(chart.upper), up(chart.lower), width) + level(chart.mean, '7 4', 0.9) : '') +
    [reach, 0, -reach]
      .map((at) => text(left - 5, up(at) + 4, at === 0 ? '0' : signed(at), chartInk.soft, 11, 'end'))
      .join('') +
    sheets.join('') +
    (chart
      ? stepsSvg(distances, chart, across, width, folded)
      : numbersSvg(distances, across, panel.head + panel.height + 12, folded))
  );
}

/** Half of a small sheet that stands for a print, px. */
const sheet = { x: 3.5, y: 4.5, fold: 4 };

/** A print as a small upright sheet: inked where it was photographed, blank where typed; a folded corner asks for a look. */
function sheetSvg(x: number, y: number, inked: boolean, folded: boolean): string {
  const grown = folded ? 2 : 0;
  const [left, right] = [round(x - sheet.x - grown), round(x + sheet.x + grown)];
  const [top, foot] = [round(y - sheet.y - grown), round(y + sheet.y + grown)];
  const fold = sheet.fold + grown;
  const corner = folded ? `H${right - fold}L${right} ${top + fold}` : `H${right}`;
  return (
    `<path d="M${left} ${top}${corner}V${foot}H${left}Z" fill="${inked ? chartInk.ink : '#fff'}"` +
    ` stroke="${folded ? chartInk.tannin : chartInk.ink}" stroke-width="${folded ? 2 : 1.2}"/>` +
    (folded
      ? `<path d="M${right - fold} ${top}V${round(top + fold)}H${right}Z" fill="#fff" stroke="${chartInk.tannin}" stroke-width="1.4"/>`
      : '')
  );
}

/** How far the prints differ among themselves, hatched between two heights. */
function spreadSvg(top: number, foot: number, width: number): string {
  const lines: string[] = [];
  const [right, high] = [width - 8, foot - top];
  for (let x = left - high; x < right; x += 9) {
    const [from, to] = [Math.max(x, left), Math.min(x + high, right)];
    if (to > from)
      lines.push(`M${round(from)} ${round(foot - (from - x))}L${round(to)} ${round(foot - (to - x))}`);
  }
  return (
    `<path d="${lines.join('')}" stroke="${chartInk.rule}" stroke-width="0.6" fill="none"/>` +
    `<path d="M${left} ${top}H${right}M${left} ${foot}H${right}" stroke="${chartInk.rule}" stroke-width="0.8" fill="none"/>`
  );
}

function stepsSvg(
  distances: ToneDrift['distances'],
  chart: NonNullable<ToneDrift['chart']>,
  across: (n: number) => number,
  width: number,
  folded: ReadonlySet<number>,
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
    text(left - 5, foot, 'step', chartInk.soft, 11, 'end') +
    numbersSvg(distances, across, foot + 13, folded)
  );
}

/** As many numbers as there is room for; those of prints to look at always, and bold. */
function numbersSvg(
  distances: ToneDrift['distances'],
  across: (n: number) => number,
  y: number,
  folded: ReadonlySet<number>,
): string {
  const kept = distances.filter(({ n }) => folded.has(n)).map(({ n }) => across(n));
  let free = Number.NEGATIVE_INFINITY;
  return distances
    .map(({ n }) => {
      const x = across(n);
      const look = folded.has(n);
      if (!look && (x - free < 18 || kept.some((at) => Math.abs(at - x) < 18))) return '';
      free = x;
      return text(x, y, String(n), look ? chartInk.tannin : chartInk.soft, look ? 13 : 11, 'middle', look);
    })
    .join('');
}

function keyWords(read: readonly ToneDrift[], width: number): readonly string[] {
  const few = `Under ${fewestForChart} prints there are distances only.`;
  const words = ['Line at 0: the approval proof. Darkness, more is darker.'];
  if (read.some(({ chart }) => chart)) {
    words.push('Hatched: as far as these prints differ among themselves. Dashed: their middle.');
    words.push('Bars: the step from print to print. Dotted: the largest that neighbours show.');
  }
  if (read.some(({ noticed }) => noticed.length > 0)) words.push('Folded corner: look at this print.');
  if (read.some(({ chart }) => !chart)) words.push(few);
  const all = read.flatMap(({ distances }) => distances);
  if (all.some(({ range }) => range))
    words.push('Inked sheet: a photograph. Within its bar the truth lies, 19 times of 20.');
  if (all.some(({ range }) => !range)) words.push('Blank sheet: typed.');
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
