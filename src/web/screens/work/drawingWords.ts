import type { Drawing } from '../../managers/zoneDrawing.ts';
import type { LiveVerdicts } from './useVerdicts.ts';

/** The finding of a drawing, what stops it first: an outline that can't be saved, a border too narrow, else its areas. */
export function drawingHeadline(
  title: string,
  { zones }: Drawing,
  verdicts: LiveVerdicts,
  stoneCm2: number,
): string {
  if (zones.length === 0) return `Draw the zones of ${title}`;
  if (verdicts.faults.length > 0)
    return verdicts.faults.length === 1
      ? 'One outline cannot be saved so'
      : `${verdicts.faults.length} outlines cannot be saved so`;
  const narrow = verdicts.borders
    ? Object.entries(verdicts.borders.enough)
        .filter(([, enough]) => !enough)
        .map(([edge]) => edge)
    : [];
  if (narrow.length === 1) return `The ${narrow[0]} border is too narrow`;
  if (narrow.length > 1)
    return `The ${narrow.slice(0, -1).join(', ')} and ${narrow.at(-1)} borders are too narrow`;
  return `${areaWords(stoneCm2 - verdicts.groundCm2)} drawn, ${areaWords(verdicts.groundCm2)} of ground`;
}

/** An area in square centimetres as one says it: a tenth under 100 cm², whole above. */
export function areaWords(areaCm2: number): string {
  const figure = areaCm2 < 100 ? Math.round(areaCm2 * 10) / 10 : Math.round(areaCm2);
  return `${figure.toLocaleString('en-GB')} cm²`;
}
