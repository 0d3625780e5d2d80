import type { Change, ComparisonRecord, CoverageInterval, ZoneResult } from '../../records/comparison.ts';
import { mediumWords } from '../../studio/etch/mediumCatalogue.ts';
import { changeWord } from '../../studio/proofs/changeWords.ts';
import { coverageFigure } from '../../studio/proofs/coverageWords.ts';
import { asWritten } from '../../words/asWritten.ts';
import {
  chartFont,
  chartInk,
  coverageGrey,
  fitText,
  fittedSize,
  shownWidth,
  shrunkName,
  svgText,
} from './chartInk.ts';
import { hatchedRectangleSvg } from './hatching.ts';
import { type LadderGroup, type LadderRow, ladderRows } from './ladderRows.ts';

export interface ToneLadderOptions {
  /** Width of the picture in px; steps wrap onto as many rows as they need. Default 700; phones 340. */
  readonly width?: number;
  /** Put before the ids inside the picture; must be unique on the page. Default `ladder`. */
  readonly idPrefix?: string;
}

const gap = 4;
const changes: readonly Change[] = ['held', 'lost', 'lighter', 'darker', 'filled', 'scum', 'undecided'];
const rowHeight = 174;
const swatchHeight = 34;
const drawnTop = 46;
const printedTop = drawnTop + swatchHeight + 1;
const wordBaseline = printedTop + swatchHeight + 29;
const hatchTop = wordBaseline + 5;
/** Letters no smaller than these can be read on a sheet of A4. */
const leastSize = 9.6;

/** A step is as wide as the longest word for what became of a tone. */
function stepWidth(): number {
  return Math.max(60, ...changes.map((change) => Math.ceil(shownWidth(changeWord(change), leastSize)) + gap));
}

/** What stands before the steps takes the room that its words need. */
function labelWidth(): number {
  return Math.max(40, Math.ceil(shownWidth('drawn', 12)), Math.ceil(shownWidth('print', 12)));
}

/**
 * The tone ladder, the trade's step scale, as one SVG: per zone the drawn step above and what it printed
 * below, touching, each in its own grey; figures in per cent with ±; the change as a word and a hatch.
 * Grouped by medium, lightest first. A record without zones gives a picture that says so.
 */
export function toneLadderSvg(record: ComparisonRecord, options: ToneLadderOptions = {}): string {
  const width = options.width ?? 700;
  const rows = ladderRows(record.zones, columnsFor(width));
  if (rows.length === 0) {
    const note = `<text x="0" y="20" font-size="13" fill="${chartInk.soft}">No zones were drawn, so there are no steps to show.</text>`;
    return picture(width, 30, 'Tone ladder without steps', note);
  }
  const prefix = options.idPrefix ?? 'ladder';
  const body = rows.map(
    (row, index) =>
      `<g transform="translate(0 ${index * rowHeight})">${rowSvg(row, `${prefix}-${index}`)}</g>`,
  );
  const name = `Tone ladder of ${record.zones.length} zones: drawn steps above, printed steps below`;
  return picture(width, rows.length * rowHeight, name, body.join(''));
}

/** The same ladder, one SVG for each row, so that sheets can break between rows. No zones: no rows. */
export function toneLadderRowSvgs(
  record: ComparisonRecord,
  options: ToneLadderOptions = {},
): readonly string[] {
  const width = options.width ?? 700;
  return ladderRows(record.zones, columnsFor(width)).map((row, index) =>
    picture(
      width,
      rowHeight,
      'Row of the tone ladder',
      rowSvg(row, `${options.idPrefix ?? 'ladder'}-${index}`),
    ),
  );
}

function columnsFor(width: number): number {
  return Math.max(1, Math.floor((width - labelWidth() + gap) / stepWidth()));
}

function picture(width: number, height: number, name: string, body: string): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"` +
    ` role="img" aria-label="${svgText(name)}" ${chartFont}>${body}</svg>`
  );
}

function rowSvg(row: LadderRow, prefix: string): string {
  const label = (y: number, text: string) =>
    `<text x="0" y="${y}" font-size="${fittedSize(text, labelWidth(), 12)}" fill="${chartInk.soft}">${text}</text>`;
  return (
    label(drawnTop + 16, 'drawn') +
    label(drawnTop + 29, '%') +
    label(printedTop + 17, 'print') +
    label(printedTop + 30, '%') +
    row.map((group) => groupSvg(group, prefix)).join('')
  );
}

function groupSvg(group: LadderGroup, prefix: string): string {
  const left = labelWidth() + group.steps[0]!.column * stepWidth();
  const width = group.steps.length * stepWidth() - gap;
  const medium = shrunkName(mediumWords(group.medium), width, 12, leastSize);
  return (
    `<path d="M${left} 15.5H${left + width}" stroke="${chartInk.ink}" stroke-width="1"/>` +
    `<text x="${left}" y="11" font-size="${medium.size}" font-weight="bold" fill="${chartInk.ink}">` +
    `${svgText(medium.text)}</text>` +
    group.steps
      .map((step) => stepSvg(step.zone, labelWidth() + step.column * stepWidth(), `${prefix}-${step.column}`))
      .join('')
  );
}

function stepSvg(zone: ZoneResult, left: number, clipId: string): string {
  const width = stepWidth() - gap;
  const centre = left + width / 2;
  const held = zone.change === 'held';
  const word = zone.printed === null && zone.covered < 0.05 ? 'off the sheet' : changeWord(zone.change);
  const hatch =
    held || zone.printed === null
      ? ''
      : hatchedRectangleSvg(zone.change, { x: left, y: hatchTop, width, height: 12 }, chartInk.ink, clipId);
  return (
    `<g><title>${svgText(stepSentence(zone, word))}</title>` +
    `<text x="${centre}" y="28" font-size="11" text-anchor="middle" fill="${chartInk.soft}">` +
    `${svgText(asWritten(fitText(zone.id, width, 11)))}</text>` +
    figure(zone.drawn, centre, drawnTop - 5) +
    swatch(zone.drawn, left, drawnTop, width) +
    swatch(zone.printed, left, printedTop, width) +
    figure(zone.printed, centre, printedTop + swatchHeight + 14) +
    hatch +
    `<text x="${centre}" y="${wordBaseline}" font-size="${Math.max(leastSize, fittedSize(word, width + 2, word.length > 8 ? 10 : 11.5))}"` +
    ` text-anchor="middle" font-weight="${held ? 'normal' : 'bold'}" fill="${chartInk.ink}">${word}</text></g>`
  );
}

function swatch(tone: CoverageInterval | null, left: number, top: number, width: number): string {
  const place = `x="${left}" y="${top}" width="${width}" height="${swatchHeight}"`;
  if (tone === null) {
    return `<rect ${place} fill="none" stroke="${chartInk.rule}" stroke-width="1" stroke-dasharray="3 3"/>`;
  }
  return `<rect ${place} fill="${coverageGrey(tone.coverage)}" stroke="${chartInk.rule}" stroke-width="0.75"/>`;
}

function figure(tone: CoverageInterval | null, centre: number, baseline: number): string {
  const text = coverageFigure(tone);
  const place = `x="${centre}" y="${baseline}" text-anchor="middle"`;
  if (text === null) return `<text ${place} font-size="11" fill="${chartInk.soft}">not known</text>`;
  return (
    `<text ${place} font-size="13" fill="${chartInk.ink}"><tspan font-weight="bold">${text.value}</tspan>` +
    `<tspan font-size="10.5" fill="${chartInk.soft}" dx="2">${text.plusMinus}</tspan></text>`
  );
}

function stepSentence(zone: ZoneResult, word: string): string {
  const say = (tone: CoverageInterval | null) => {
    const text = coverageFigure(tone);
    return text === null ? 'not known' : `${text.value} % ${text.plusMinus}`;
  };
  return `${asWritten(`${zone.id} ${zone.name}`)}, ${mediumWords(zone.medium)}: drawn ${say(zone.drawn)}, printed ${say(zone.printed)}, ${word}`;
}
