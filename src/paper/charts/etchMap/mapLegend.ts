import type { EtchPlan, PlannedPart, PlannedZone } from '../../../records/etch.ts';
import type { EtchStrength } from '../../../records/etchStrength.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { asWritten } from '../../../words/asWritten.ts';
import { textInWords } from '../../../words/inWords.ts';
import { chartInk, svgText } from '../chartInk.ts';
import { hatchedPlaceSvg } from '../strengthHatching.ts';
import { type EtchMapInput, mapSideWords } from './mapAreas.ts';

/** One line of the legend: a strength that the plan uses, and its etch; null: no rule. */
export interface LegendEntry {
  readonly strength: EtchStrength | null;
  readonly words: string;
}

const order: readonly EtchStrength[] = ['ground', 'scant', 'light', 'middle', 'dark'];

/** The strengths that a plan uses, weakest first, each with its etch; then what no rule means, where that occurs. */
export function legendEntries(plan: EtchPlan): LegendEntry[] {
  const laid = plan.zones.flatMap((row): readonly (PlannedZone | PlannedPart)[] =>
    row.parts.length > 0 ? row.parts : [row],
  );
  const used = order.flatMap((strength): LegendEntry[] => {
    const row = laid.find((candidate) => candidate.strength === strength);
    return row?.etch ? [{ strength, words: textInWords(`${strength}: ${row.etch.name}`) }] : [];
  });
  const unruled = laid.some((row) => row.strength === null);
  return unruled
    ? [...used, { strength: null, words: textInWords('no rule here: test a patch first') }]
    : used;
}

/** A swatch of a strength's hatch, outlined; user units. @param unit user units for one printed mm. */
export function hatchSwatchSvg(
  strength: EtchStrength | null,
  x: number,
  y: number,
  width: number,
  height: number,
  unit: number,
): string {
  const ring: Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  const box = { left: x, top: y, right: x + width, bottom: y + height };
  const dash = strength === null ? ` stroke-dasharray="${2.4 * unit} ${1.6 * unit}"` : '';
  return (
    (strength === null ? '' : hatchedPlaceSvg(strength, [ring], chartInk.ink, unit, box)) +
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="none" stroke="${chartInk.ink}"` +
    ` stroke-width="${0.5 * unit}"${dash}/>`
  );
}

/** The side shown and the meaning of the hatching, from `top` downwards, in user units; with the room it takes. */
export function mapLegendSvg(
  { plan }: EtchMapInput,
  mirrored: boolean,
  unit: number,
  top: number,
): { readonly svg: string; readonly width: number; readonly height: number } {
  const entries = legendEntries(plan);
  const line = 9 * unit;
  const text = (x: number, y: number, size: number, weight: string, words: string) =>
    `<text x="${x}" y="${y}" font-size="${size}" font-weight="${weight}" fill="${chartInk.ink}">${svgText(asWritten(words))}</text>`;
  const side = textInWords(mapSideWords(mirrored));
  const rows = entries.map((entry, index) => {
    const y = top + 6 * unit + index * line;
    return (
      hatchSwatchSvg(entry.strength, 0, y, 18 * unit, 7 * unit, unit) +
      text(22 * unit, y + 5 * unit, 4.2 * unit, 'normal', entry.words)
    );
  });
  const longest = Math.max(side.length, ...entries.map((entry) => entry.words.length));
  return {
    svg: text(0, top + 3 * unit, 4.6 * unit, 'bold', side) + rows.join(''),
    width: (22 + longest * 0.58 * 4.2) * unit,
    height: 6 * unit + entries.length * line,
  };
}
