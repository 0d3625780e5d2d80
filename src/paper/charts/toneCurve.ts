import type { ComparisonRecord, ToneCurve } from '../../records/comparison.ts';
import { mediumWords } from '../../studio/etch/mediumCatalogue.ts';
import { shareWords } from '../../studio/proofs/coverageWords.ts';
import { textInWords } from '../../words/inWords.ts';
import { chartFont, chartInk, fittedName, fittedSize, shownWidth, svgText } from './chartInk.ts';

export interface ToneCurveOptions {
  /** Width of the picture in px; panels wrap onto as many rows as they need. Default 700; phones 340. */
  readonly width?: number;
}

const panelWidth = 170;
const panelHeight = 206;
const plot = { left: 28, top: 22, side: 132 };
/** Room for the words beneath a plot. */
const wordsWidth = panelWidth - plot.left;
const lineHeight = 14;

/**
 * The tone curves as one SVG, a panel for each medium side by side: printed against drawn coverage in per
 * cent, with the 95 % band, the line on which a print repeats its stone, and loss and fill point in words.
 * A record without curves gives a picture that says so.
 */
export function toneCurveSvg(record: ComparisonRecord, options: ToneCurveOptions = {}): string {
  const width = options.width ?? 700;
  const curves = record.toneCurves.filter((curve) => curve.points.length > 0);
  if (curves.length === 0) {
    const note = `<text x="0" y="20" font-size="13" fill="${chartInk.soft}">No medium has enough tones for a curve.</text>`;
    return picture(width, 30, 'Tone curves: none', note);
  }
  const columns = Math.max(1, Math.floor(width / panelWidth));
  const rowHeight = panelHeight + (curves.some((curve) => pointLines(curve).length > 1) ? lineHeight : 0);
  const panels = curves.map((curve, index) => {
    const x = (index % columns) * panelWidth;
    const y = Math.floor(index / columns) * rowHeight;
    return `<g transform="translate(${x} ${y})">${panelSvg(curve, record)}</g>`;
  });
  const key = keyLines(record, width);
  const foot = Math.ceil(curves.length / columns) * rowHeight;
  const height = foot + key.length * 16 + 4;
  const keyText = key.map(
    (line, index) =>
      `<text x="0" y="${foot + 12 + index * 16}" font-size="11" fill="${chartInk.soft}">${line}</text>`,
  );
  const name = `Tone curves, printed on drawn coverage: ${curves.map(curveSentence).join('; ')}`;
  return picture(width, height, name, panels.join('') + keyText.join(''));
}

/** One curve in words: `crayon: lost below 12 %, fills in above 78 %`. */
export function curveSentence(curve: ToneCurve): string {
  return `${mediumWords(curve.medium)}: ${pointWords(curve).join(', ') || 'no loss and no closing seen'}`;
}

function keyLines(record: ComparisonRecord, width: number): readonly string[] {
  const kept = shareWords(record.parameters.lost.keptAtMost);
  const parts = [
    'Grey: the truth lies within, 19 times of 20.',
    'Dashed: prints as drawn.',
    `Dotted: ${kept} of what was drawn;`,
    'below it a tone is lost.',
  ];
  const lines = [parts.join(' '), `${parts[2]} ${parts[3]}`];
  if (width >= 620 && hasRoom(lines[0]!, width)) return lines.slice(0, 1);
  return width >= 320 && hasRoom(lines[1]!, width) ? [...parts.slice(0, 2), lines[1]!] : parts;
}

/** Whether a line of the key that has room in English has it in the words in use, too. */
function hasRoom(line: string, width: number): boolean {
  return textInWords(line) === line || shownWidth(line, 11) <= width;
}

function pointWords(curve: ToneCurve): string[] {
  const words: string[] = [];
  if (curve.lossPoint !== null) words.push(`lost below ${pointShare(curve.lossPoint)}`);
  if (curve.fillPoint !== null) words.push(`fills in above ${pointShare(curve.fillPoint)}`);
  return words;
}

/** The same as they stand beneath a plot: on one line where they have room, else each on its own. */
function pointLines(curve: ToneCurve): readonly string[] {
  const words = pointWords(curve);
  const line = words.join(', ');
  return words.length > 1 && textInWords(line) !== line && shownWidth(line, 12) > wordsWidth ? words : [line];
}

function pointShare(coverage: number): string {
  return shareWords(Math.round(coverage * 100) / 100);
}

function picture(width: number, height: number, name: string, body: string): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"` +
    ` role="img" aria-label="${svgText(name)}" ${chartFont}>${body}</svg>`
  );
}

const across = (coverage: number) => round(plot.left + plot.side * coverage);
const up = (coverage: number) => round(plot.top + plot.side * (1 - coverage));

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function panelSvg(curve: ToneCurve, record: ComparisonRecord): string {
  const points = [...curve.points].sort((a, b) => a.drawn - b.drawn);
  const medium = mediumWords(curve.medium);
  // A long name takes the room of the upright axis's words, which then stand beneath the plot.
  const besideAxis = plot.side - 60;
  const long = fittedName(medium, besideAxis, 13) !== fittedName(medium, plot.side, 13);
  const line = points.map((point) => `${across(point.drawn)} ${up(point.printed)}`).join('L');
  const band = [
    ...points.map((point) => `${across(point.drawn)} ${up(point.high)}`),
    ...[...points].reverse().map((point) => `${across(point.drawn)} ${up(point.low)}`),
  ].join('L');
  const dots = points.map(
    (point) => `<circle cx="${across(point.drawn)}" cy="${up(point.printed)}" r="2" fill="${chartInk.ink}"/>`,
  );
  return (
    `<text x="${plot.left}" y="12" font-size="13" fill="${chartInk.ink}">` +
    `<tspan font-weight="bold">${svgText(fittedName(medium, long ? plot.side : besideAxis, 13))}</tspan>` +
    `${long ? '' : `<tspan font-size="11" fill="${chartInk.soft}" dx="5">printed, %</tspan>`}</text>` +
    axes(long ? 'printed over drawn, %' : 'drawn, %') +
    `<path d="M${band}Z" fill="${chartInk.band}"/>` +
    `<path d="M${across(0)} ${up(0)}L${across(1)} ${up(1)}" stroke="${chartInk.soft}" stroke-width="0.9"` +
    ` stroke-dasharray="5 3" fill="none"/>` +
    `<path d="M${line}" stroke="${chartInk.ink}" stroke-width="1.8" fill="none" stroke-linejoin="round"/>` +
    dots.join('') +
    marks(curve, record)
  );
}

/** @param beneath what the axes say, beneath the plot */
function axes(beneath: string): string {
  const ticks = [0, 0.25, 0.5, 0.75, 1];
  const text = (x: number, y: number, anchor: string, words: string) =>
    `<text x="${x}" y="${y}" font-size="11" text-anchor="${anchor}" fill="${chartInk.soft}">${words}</text>`;
  return (
    `<path d="M${across(0)} ${up(1)}V${up(0)}H${across(1)}" stroke="${chartInk.ink}" stroke-width="1" fill="none"/>` +
    ticks
      .map(
        (tick) =>
          `<path d="M${across(tick)} ${up(0)}v4M${across(0)} ${up(tick)}h-4" stroke="${chartInk.ink}"` +
          ` stroke-width="1" fill="none"/>` +
          text(across(tick), up(0) + 15, 'middle', String(tick * 100)) +
          text(across(0) - 6, up(tick) + 4, 'end', String(tick * 100)),
      )
      .join('') +
    text(across(1), up(0) + 28, 'end', beneath)
  );
}

/** Loss and fill point: an upright line through the plot, and their words beneath it. */
function marks(curve: ToneCurve, record: ComparisonRecord): string {
  const mark = (coverage: number, dash: string) =>
    `<path d="M${across(coverage)} ${up(0)}V${up(1)}" stroke="${chartInk.tannin}" stroke-width="1.4"` +
    ` stroke-dasharray="${dash}" fill="none"/>`;
  const { keptAtMost } = record.parameters.lost;
  const lossLimit =
    curve.lossPoint === null
      ? ''
      : `<path d="M${across(0)} ${up(0)}L${across(1)} ${up(keptAtMost)}" stroke="${chartInk.soft}"` +
        ` stroke-width="0.7" stroke-dasharray="1 3" fill="none"/>`;
  const found = pointWords(curve).length > 0;
  const lines = found ? pointLines(curve) : ['no loss, no closing seen'];
  const words = lines.map(
    (line, index) =>
      `<text x="${plot.left}" y="${panelHeight - 7 + index * lineHeight}" font-size="${fittedSize(line, wordsWidth, 12)}"` +
      `${found ? ` font-weight="bold" fill="${chartInk.tannin}"` : ` fill="${chartInk.soft}"`}>${line}</text>`,
  );
  return (
    lossLimit +
    (curve.lossPoint === null ? '' : mark(curve.lossPoint, '4 2')) +
    (curve.fillPoint === null ? '' : mark(curve.fillPoint, '1 2')) +
    words.join('')
  );
}
