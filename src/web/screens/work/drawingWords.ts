import { doubtWords } from '../../../studio/etch/areaDoubt.ts';
import type { Drawing } from '../../managers/zoneDrawing.ts';
import { thousands } from '../../words/figures.ts';
import { areaIn, inchUnitOf } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';
import type { LiveVerdicts } from './useVerdicts.ts';

/** The finding of a drawing, what stops it first: an outline that can't be saved, a border too narrow, else its areas. */
export function drawingHeadline(
  title: string,
  { zones }: Drawing,
  verdicts: LiveVerdicts,
  stoneCm2: number,
): string {
  if (zones.length === 0) return say('Draw the zones of {title}', { title });
  if (verdicts.faults.length > 0)
    return say(
      '{count, plural, one {One outline cannot be saved so} other {{count} outlines cannot be saved so}}',
      { count: verdicts.faults.length },
    );
  const narrow = verdicts.borders
    ? Object.entries(verdicts.borders.enough)
        .filter(([, enough]) => !enough)
        .map(([edge]) => edge)
    : [];
  if (narrow.length === 1) return say('The {narrow} border is too narrow', { narrow: narrow[0] });
  if (narrow.length > 1)
    return say('The {narrow} and {narrow2} borders are too narrow', {
      narrow: narrow.slice(0, -1).join(', '),
      narrow2: narrow.at(-1),
    });
  return say('{area} drawn, {area2} of ground', {
    area: areaWords(stoneCm2 - verdicts.groundCm2),
    area2: areaWords(verdicts.groundCm2),
  });
}

/** The ± of an area that stands before it, in the same unit; or that nobody knows it. */
export function areaDoubtText(doubtCm2: number | null): string {
  return toldText(doubtWords(doubtCm2 === null ? null : doubtCm2 / (inchUnitOf('cm²')?.per ?? 1)));
}

/** An area in square centimetres as one says it: a tenth under 100, whole above. */
export function areaWords(areaCm2: number): string {
  return areaIn(areaCm2, (figure) =>
    thousands(figure < 100 ? Math.round(figure * 10) / 10 : Math.round(figure)),
  );
}
