import type { TrialDesign, TrialPatch } from '../../records/trialDesign.ts';
import type { Point } from '../../science/geometry/point.ts';
import { asWritten } from '../../words/asWritten.ts';
import { chartInk, svgText } from './chartInk.ts';

/**
 * The patches of one stone with their codes, as SVG content whose unit is the millimetre of the stone; mirrored, places are
 * turned over and words are not.
 */
export function trialTemplateMarks(
  design: Pick<TrialDesign, 'wish' | 'patches'>,
  stone: number,
  mirrored: boolean,
) {
  const { widthMm, heightMm } = design.wish.stone;
  const { sidesMm, endsMm } = design.wish.border;
  const at = ([x, y]: Point): Point => [mirrored ? widthMm - x : x, y];
  const own = design.patches.filter((patch) => patch.stone === stone);
  const outline = (patch: TrialPatch) => {
    const corners = patch.polygonMm.map(at).map(([x, y]) => `${round(x)} ${round(y)}`);
    return `<path d="M${corners.join('L')}Z" fill="none" stroke="${chartInk.ink}" stroke-width="0.3"/>`;
  };
  const code = (patch: TrialPatch) => {
    const [left, bottom] = at(patch.polygonMm[mirrored ? 2 : 3]!);
    return (
      `<text x="${round(left + 0.8)}" y="${round(bottom + 3.4)}" font-size="3.2" fill="${chartInk.ink}">` +
      `${svgText(asWritten(patch.code))}</text>`
    );
  };
  return {
    places:
      `<rect x="0" y="0" width="${widthMm}" height="${heightMm}" fill="none" stroke="${chartInk.ink}" stroke-width="0.5"/>` +
      `<rect x="${sidesMm}" y="${endsMm}" width="${widthMm - 2 * sidesMm}" height="${heightMm - 2 * endsMm}"` +
      ` fill="none" stroke="${chartInk.ink}" stroke-width="0.2" stroke-dasharray="1.5 1.5"/>${own.map(outline).join('')}`,
    labels: own.map(code).join(''),
  };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
