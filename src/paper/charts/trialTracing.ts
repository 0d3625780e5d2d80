import type { TrialDesign, TrialPatch } from '../../records/trialDesign.ts';
import type { Point } from '../../science/geometry/point.ts';
import { squareName } from '../../studio/trials/places/patchName.ts';
import { chartInk, svgText } from './chartInk.ts';
import { patchMark } from './patchMark.ts';

/** Marks stand 4 mm high: in the bare stone between patches, and easy to copy with a crayon. */
const markScale = 0.4;
/** Names are set no smaller, mm. */
const leastLetterMm = 1.9;

/**
 * The patches of one stone, each with its mark and its name beside it, as SVG content whose unit is the millimetre of the stone; mirrored, places are
 * turned over and marks are not.
 */
export function trialTracingMarks(
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
  const mark = ({ row, column, polygonMm }: TrialPatch) => {
    const [left, bottom] = at(polygonMm[mirrored ? 2 : 3]!);
    const name = squareName(row, column);
    const { path, width } = patchMark({ id: name, row, column })!;
    const right = left + 2.4 + width * markScale;
    const room = Math.abs(polygonMm[1]![0] - polygonMm[0]![0]) - (right - left);
    const size = Math.max(leastLetterMm, Math.min(3, room / (0.5 * name.length)));
    return (
      `<text x="${round(right)}" y="${round(bottom + 4)}" font-size="${round(size)}" fill="${chartInk.ink}">` +
      `${svgText(name)}</text>` +
      `<path transform="translate(${round(left + 0.8)} ${round(bottom + 0.6)}) scale(${markScale})" d="${path}"` +
      ` fill="none" stroke="${chartInk.ink}" stroke-width="1.6" stroke-linecap="round"/>`
    );
  };
  return {
    places:
      `<rect x="0" y="0" width="${widthMm}" height="${heightMm}" fill="none" stroke="${chartInk.ink}" stroke-width="0.5"/>` +
      `<rect x="${sidesMm}" y="${endsMm}" width="${widthMm - 2 * sidesMm}" height="${heightMm - 2 * endsMm}"` +
      ` fill="none" stroke="${chartInk.ink}" stroke-width="0.2" stroke-dasharray="1.5 1.5"/>${own.map(outline).join('')}`,
    labels: own.map(mark).join(''),
  };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
