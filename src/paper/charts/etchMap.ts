import type { EtchStrength } from '../../records/etchStrength.ts';
import { asWritten } from '../../words/asWritten.ts';
import { chartFont, chartInk, svgText } from './chartInk.ts';
import { type EtchMapInput, type MapArea, mapAreas, mapSideWords } from './etchMap/mapAreas.ts';
import { mapLabelsSvg } from './etchMap/mapLabels.ts';
import { mapLegendSvg } from './etchMap/mapLegend.ts';
import { type Box, hatchedPlaceSvg } from './strengthHatching.ts';
import { zoneName } from './zoneName.ts';

export interface EtchMapOptions {
  /** As the print will show it: left and right changed over. Default: as seen on the stone. */
  readonly mirrored?: boolean;
  /** How many times smaller than life the picture will be shown: letters and lines grow by it. Default 1: true size. */
  readonly reduction?: number;
  /** With the side it shows and the meaning of the hatching beneath. Default true. */
  readonly legend?: boolean;
}

/**
 * The etch map as one SVG: the stone seen from above, its zones where they lie, hatched by strength, each with its
 * letter, millilitres and minutes. One unit is one millimetre of stone; so are width and height, with 1 printed mm
 * of margin all round for the outline.
 */
export function etchMapSvg(input: EtchMapInput, options: EtchMapOptions = {}): string {
  const { widthMm, heightMm } = input.request.stone;
  const unit = options.reduction ?? 1;
  const mirrored = options.mirrored ?? false;
  const all = { left: 0, top: 0, right: widthMm, bottom: heightMm };
  const marks = etchMapMarks(input, mirrored, unit, all, all);
  const legend = options.legend === false ? null : mapLegendSvg(input, mirrored, unit, heightMm + 5 * unit);
  const width = Math.max(widthMm, legend?.width ?? 0) + 2 * unit;
  const height = heightMm + 2 * unit + (legend ? legend.height + 5 * unit : 0);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm"` +
    ` viewBox="${-unit} ${-unit} ${width} ${height}" role="img"` +
    ` aria-label="${svgText(mapName(input, mirrored))}" ${chartFont}>` +
    `${marks.places}${marks.labels}${legend?.svg ?? ''}</svg>`
  );
}

/** The marks of a map in stone mm, as SVG: what lies beneath, what stands on it, and the boxes that the labels fill. */
export interface EtchMapMarks {
  readonly places: string;
  readonly labels: string;
  readonly labelBoxes: readonly Box[];
}

/**
 * The marks of the map without a picture around them, for a tile or a sheet; the ground comes first.
 * @param unit stone mm for one printed mm. @param shown nothing outside is hatched (outlines may reach over it).
 * @param labelled letters stand in this box, for what shows in it.
 */
export function etchMapMarks(
  input: EtchMapInput,
  mirrored: boolean,
  unit: number,
  shown: Box,
  labelled: Box,
): EtchMapMarks {
  const areas = mapAreas(input, mirrored);
  const letterMostMm = Math.min(16, Math.max(4, input.request.stone.widthMm / unit / 13));
  const labels = mapLabelsSvg(areas, unit, labelled, letterMostMm, unit < smallFrom);
  return {
    places: areas.map((area) => areaSvg(area, unit, shown)).join(''),
    labels: labels.svg,
    labelBoxes: labels.boxes,
  };
}

/** From this reduction on a map shows letters without words, and its hatching closer. */
const smallFrom = 2.5;

function areaSvg({ strength, rings }: MapArea, unit: number, shown: Box): string {
  const path = rings.map((ring) => `M${ring.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`).join('');
  const dash = strength === null ? ` stroke-dasharray="${2.4 * unit} ${1.6 * unit}"` : '';
  return (
    `<path d="${path}" fill="#ffffff" fill-rule="evenodd"/>` +
    (strength === null
      ? ''
      : hatchedPlaceSvg(strength, rings, chartInk.ink, unit < smallFrom ? unit : 0.6 * unit, shown)) +
    `<path d="${path}" fill="none" stroke="${chartInk.ink}" stroke-width="${outlineMm * unit}"${dash}/>`
  );
}

/** Printed width of every outline; its middle runs along the zone's edge. */
export const outlineMm = 0.5;

function mapName({ plan }: EtchMapInput, mirrored: boolean): string {
  const words = (strength: EtchStrength | null) => strength ?? 'no rule';
  const zones = plan.zones
    .map((row) => `${asWritten(row.letter)} ${zoneName(row)}, ${words(row.strength)}`)
    .join('; ');
  return `Etch map. ${mapSideWords(mirrored)}. ${zones}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
