import type { PatchResidual, PositionEffect } from '../../records/testStoneAnswer.ts';
import type { ThirdScatter } from '../../studio/trials/answer/readingQuestions.ts';
import { chartFont, chartInk, svgText } from './chartInk.ts';

/** A plain picture of what readings say: lines and rings to be stroked, words to be set; 240 wide, 110 high. */
export interface ReadingPicture {
  readonly lines: string;
  /** What stands out, drawn heavier. */
  readonly heavy: string;
  readonly words: readonly { readonly x: number; readonly y: number; readonly text: string }[];
}

export const readingPictureSize = [240, 110] as const;

const [left, right, middle] = [12, 228, 120];

/** Every patch as a peg on one line: how much lighter or darker it printed than the rest say. */
export function pegsPicture(
  residuals: readonly PatchResidual[],
  far: readonly PatchResidual[],
): ReadingPicture {
  const reach = Math.max(0.02, ...residuals.map(({ residual }) => Math.abs(residual)));
  const peg = (each: PatchResidual, high: number) => {
    const x = round(middle + (each.residual / reach) * (right - middle));
    return `M${x} 60V${60 - high}`;
  };
  const near = residuals.filter((each) => !far.includes(each));
  return {
    lines: `M${left} 60H${right}M${middle} 66V70${near.map((each) => peg(each, 18)).join('')}`,
    heavy: far.map((each) => peg(each, 34)).join(''),
    words: [
      { x: left + 34, y: 92, text: `lighter, −${reach.toFixed(2)}` },
      { x: middle, y: 84, text: 'as the rest say' },
      { x: right - 34, y: 92, text: `darker, +${reach.toFixed(2)}` },
    ],
  };
}

/** Light, middle and dark thirds side by side, each as wide open as its readings scatter. */
export function jawsPicture(thirds: readonly ThirdScatter[]): ReadingPicture {
  const most = Math.max(1e-6, ...thirds.map(({ usual }) => usual ?? 0));
  const at = (nth: number) => 44 + 76 * nth;
  const jaws = thirds.flatMap(({ usual }, nth) => {
    if (usual === null) return [];
    const half = round(2 + (30 * usual) / most);
    return [
      `M${at(nth) - 16} ${44 - half}H${at(nth) + 16}M${at(nth) - 16} ${44 + half}H${at(nth) + 16}M${at(nth)} ${44 - half}V${44 + half}`,
    ];
  });
  return {
    lines: `M${left} 44H${right}`,
    heavy: jaws.join(''),
    words: thirds.map(({ of, usual }, nth) => ({
      x: at(nth),
      y: 96,
      text: usual === null ? `${of}: not known` : `${of} ±${usual.toFixed(3)}`,
    })),
  };
}

/** The stone from above with a slope across and along it: level where none is sure. */
export function slopePicture(position: readonly PositionEffect[]): ReadingPicture {
  const sure = (along: PositionEffect['along']) => {
    const found = position.find((each) => each.along === along && (each.low > 0 || each.high < 0));
    return found ? Math.sign(found.per100Mm) : 0;
  };
  const across = 12 * sure('left to right');
  const along = 12 * sure('head to tail');
  return {
    lines: 'M60 10H180V90H60Z',
    heavy: `M72 ${50 + across}L168 ${50 - across}M${120 + along} 20L${120 - along} 80`,
    words: [
      { x: 32, y: 53, text: 'left' },
      { x: 208, y: 53, text: 'right' },
      { x: 120, y: 8, text: 'head' },
      { x: 120, y: 104, text: 'tail' },
    ],
  };
}

/** A picture as SVG, for paper. */
export function readingPictureSvg({ lines, heavy, words }: ReadingPicture, widthPt: number): string {
  const [width, height] = readingPictureSize;
  const stroke = (path: string, wide: number) =>
    path === ''
      ? ''
      : `<path d="${path}" fill="none" stroke="${chartInk.ink}" stroke-width="${wide}" stroke-linecap="round"/>`;
  const texts = words.map(
    ({ x, y, text }) =>
      `<text x="${x}" y="${y}" font-size="10.4" text-anchor="middle" fill="${chartInk.soft}">${svgText(text)}</text>`,
  );
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPt}" height="${round((widthPt * height) / width)}" viewBox="0 0 ${width} ${height}" ${chartFont}>` +
    `${stroke(lines, 1)}${stroke(heavy, 2.4)}${texts.join('')}</svg>`
  );
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
