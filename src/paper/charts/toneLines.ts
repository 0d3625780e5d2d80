import type { Measured } from '../../foundation/measured.ts';
import { type SeriesTone, seriesTones } from '../../records/proofSeries.ts';
import type { SeriesPull } from '../../records/workSeries.ts';
import { darknessWords } from '../../studio/proofs/seriesWords.ts';
import { chartFont, chartInk, shownWidth, svgText } from './chartInk.ts';
import { hatchedRectangleSvg } from './hatching.ts';
import { keyRows, keySvg } from './toneLineKey.ts';
import { type DrawnSeries, type LineScale, lineScale, tickValues } from './toneLineScale.ts';
import { valueParts, valueWords } from './toneValueWords.ts';

export interface ToneLinesOptions {
  /** Width and height of the picture in px. Default 700 × 420; phones 340 wide. */
  readonly width?: number;
  readonly height?: number;
  /** Put before the ids inside the picture; must be unique on the page. Default `lines`. */
  readonly idPrefix?: string;
}

interface Plot {
  readonly left: number;
  readonly right: number;
  /** Of the whole picture. */
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
}

const letterOf: Readonly<Record<SeriesTone, string>> = { lights: 'L', middles: 'M', darks: 'D' };
const headHeight = 4;
const gap = 12;

/**
 * Lights, middles and darks of a work's pulls as three lines in one SVG, all to one scale: what was compared is joined,
 * thick bars are one σ, thin ones the 95 % interval, and the hatched band is the tolerance about the latest compared pull.
 * Pulls that were left out stand unjoined as crosses. A series without any reading gives a picture that says so.
 */
export function toneLinesSvg(series: DrawnSeries, options: ToneLinesOptions = {}): string {
  const width = options.width ?? 700;
  const read = series.pulls.filter(({ tones }) => seriesTones.some((tone) => tones[tone] !== null));
  if (read.length === 0) {
    const note = `<text x="0" y="20" font-size="14" fill="${chartInk.soft}">No pull has been read yet.</text>`;
    return picture(width, 30, 'Tones of the pulls: none read yet', note);
  }
  const height = options.height ?? 420;
  const key = keyRows(series, width);
  const foot = 26 + key.length * 19;
  const panel = (height - foot - headHeight - 2 * gap) / 3;
  const scale = lineScale(series);
  const prefix = options.idPrefix ?? 'lines';
  const body = seriesTones.map((tone, index) => {
    const top = headHeight + index * (panel + gap);
    const plot = { left: 84, right: width - beside(width), top, bottom: top + panel, width };
    return panelSvg(series, tone, plot, scale, `${prefix}-${tone}`);
  });
  const last = { left: 84, right: width - beside(width), top: 0, bottom: height - foot, width };
  return picture(
    width,
    height,
    toneLinesWords(series),
    body.join('') + numbers(series.pulls, last) + keySvg(key, height - foot + 30, `${prefix}-key`),
  );
}

/** The same in words, tone by tone: `lights 0.1 ± 0.02 on pull 5`. */
export function toneLinesWords({ pulls, tolerance }: DrawnSeries): string {
  const each = seriesTones.map((tone) => {
    const latest = pulls.findLast(({ tones }) => tones[tone] !== null);
    const value = latest?.tones[tone];
    return value ? `${tone} ${valueWords(value)} on pull ${latest.number}` : `${tone} not read`;
  });
  return `Darkness of the pulls: ${each.join(', ')}. Tolerance ${darknessWords(tolerance)}.`;
}

function panelSvg(series: DrawnSeries, tone: SeriesTone, plot: Plot, scale: LineScale, id: string): string {
  const { pulls, tolerance, sigma, answer } = series;
  const up = (value: number) =>
    round(plot.bottom - ((value - scale.from[tone]) / scale.span) * (plot.bottom - plot.top));
  const at = (index: number) => placeOf(index, pulls.length, plot);
  const latest = (pulls.findLast((pull) => pull.compared && pull.tones[tone]) ??
    pulls.findLast((pull) => pull.tones[tone]))!;
  const now = latest?.tones[tone] ?? null;
  const middle = (plot.top + plot.bottom) / 2;
  const head = letterSvg(tone, middle);
  const frame =
    `<path d="M${plot.left} ${round(plot.top)}V${round(plot.bottom)}H${plot.right}" stroke="${chartInk.ink}"` +
    ` stroke-width="1" fill="none"/>`;
  if (now === null) {
    const words = `<text x="${plot.left + 12}" y="${round(middle + 5)}" font-size="14" fill="${chartInk.soft}">the ${tone} were not read</text>`;
    return head + frame + words;
  }
  const top = Math.max(plot.top, up(now.value + tolerance));
  const bottom = Math.min(plot.bottom, up(now.value - tolerance));
  const band = hatchedRectangleSvg(
    'lighter',
    { x: plot.left, y: round(top), width: round(plot.right - plot.left), height: round(bottom - top) },
    chartInk.rule,
    id,
  );
  const compared = pulls.flatMap((pull, index) =>
    pull.compared && pull.tones[tone] ? [`${at(index)} ${up(pull.tones[tone].value)}`] : [],
  );
  const line =
    compared.length < 2
      ? ''
      : `<path d="M${compared.join('L')}" stroke="${chartInk.ink}" stroke-width="2" fill="none"/>`;
  const plateau = answer.tones.find((course) => course.tone === tone)?.plateau ?? null;
  const marks = pulls.map((pull, index) => {
    const value = pull.tones[tone];
    return value ? markSvg(pull, value, at(index), up, pull.compared ? sigma : null) : '';
  });
  return (
    head +
    band +
    ticksSvg(tone, scale, plot, up) +
    frame +
    (plateau && inside(plateau.value, tone, scale) ? plateauSvg(up(plateau.value), plot) : '') +
    line +
    marks.join('') +
    figureSvg(now, latest.number, plot)
  );
}

function inside(value: number, tone: SeriesTone, { from, span }: LineScale): boolean {
  return value > from[tone] && value < from[tone] + span;
}

function letterSvg(tone: SeriesTone, middle: number): string {
  return (
    `<text x="0" y="${round(middle)}" font-size="26" font-weight="bold" fill="${chartInk.ink}">${letterOf[tone]}</text>` +
    `<text x="0" y="${round(middle + 17)}" font-size="12" fill="${chartInk.ink}">${tone}</text>`
  );
}

function ticksSvg(tone: SeriesTone, scale: LineScale, plot: Plot, up: (value: number) => number): string {
  return tickValues(scale.from[tone], scale.span)
    .filter((value) => up(value) > plot.top + 5 && up(value) < plot.bottom - 3)
    .map(
      (value) =>
        `<path d="M${plot.left} ${up(value)}h-4" stroke="${chartInk.ink}" stroke-width="1"/>` +
        `<text x="${plot.left - 7}" y="${up(value) + 4}" font-size="11" text-anchor="end" fill="${chartInk.soft}">` +
        `${darknessWords(value)}</text>`,
    )
    .join('');
}

function markSvg(
  { how, compared }: SeriesPull,
  { value, low, high }: Measured,
  x: number,
  up: (value: number) => number,
  sigma: number | null,
): string {
  const y = up(value);
  const bar = (from: number, to: number, thick: number) =>
    `<path d="M${x} ${up(from)}V${up(to)}" stroke="${chartInk.ink}" stroke-width="${thick}"/>`;
  if (!compared)
    return (
      bar(low, high, 0.8) +
      `<path d="M${x - 5} ${round(y - 5)}l10 10m0 -10l-10 10" stroke="${chartInk.soft}" stroke-width="2"/>`
    );
  return (
    bar(low, high, 0.9) +
    (sigma === null ? '' : bar(value - sigma, value + sigma, 3.2)) +
    `<circle cx="${x}" cy="${y}" r="3.8" stroke="${chartInk.ink}" stroke-width="2"` +
    ` fill="${how === 'eye' ? '#fff' : chartInk.ink}"/>`
  );
}

function plateauSvg(y: number, { left, right }: Plot): string {
  return `<path d="M${left} ${y}H${right}" stroke="${chartInk.tannin}" stroke-width="1.4" stroke-dasharray="7 4"/>`;
}

/** Room for the newest figure, right of a plot. */
function beside(width: number): number {
  return width < 480 ? 88 : 118;
}

function figureSvg(now: Measured, number: number, { right, top, bottom, width }: Plot): string {
  const { figure, arm } = valueParts(now);
  const y = (top + bottom) / 2;
  const x = right + 12;
  const whole = `± ${arm}, pull ${number}`;
  // What has no room in one line stands in two.
  const lines = shownWidth(whole, 12) > width - x ? [`± ${arm}`, `pull ${number}`] : [whole];
  return (
    `<text x="${x}" y="${round(y)}" font-size="24" font-weight="bold" fill="${chartInk.ink}">${figure}</text>` +
    lines
      .map(
        (line, index) =>
          `<text x="${x}" y="${round(y + 17 + 14 * index)}" font-size="12" fill="${chartInk.soft}">${line}</text>`,
      )
      .join('')
  );
}

function numbers(pulls: readonly SeriesPull[], plot: Plot): string {
  // on a narrow picture only as many numbers as can be read
  const every = Math.ceil((pulls.length * 26) / (plot.right - plot.left));
  return pulls
    .map(({ number }, index) =>
      (pulls.length - 1 - index) % every
        ? ''
        : `<text x="${placeOf(index, pulls.length, plot)}" y="${round(plot.bottom + 17)}" font-size="13"` +
          ` font-weight="bold" text-anchor="middle" fill="${chartInk.ink}">${number}</text>`,
    )
    .concat(
      `<text x="${plot.right + 12}" y="${round(plot.bottom + 17)}" font-size="12" fill="${chartInk.soft}">pull</text>`,
    )
    .join('');
}

function placeOf(index: number, count: number, { left, right }: Plot): number {
  return round(left + ((index + 0.5) / count) * (right - left));
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
