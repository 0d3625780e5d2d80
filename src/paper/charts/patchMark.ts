import type { StonePatch } from '../../records/testStone.ts';
import { patchName, stepOf } from '../../studio/trials/places/patchName.ts';

/** A mark to be stroked, not filled, with round ends of 1.6; from 0, 0 to `width`, `height`. */
export interface PatchMark {
  readonly path: string;
  readonly width: number;
  readonly height: number;
}

const height = 10;
const gap = 4;

/**
 * The short mark that stands beside a patch, as one can lay it with a crayon: strokes count its row from the head, points its
 * place from the left, low dashes its step; a barred stroke, a ring and a tall dash are five. Our own.
 * @returns null for a patch that stands in no row, or goes by a name of its own
 */
export function patchMark(
  patch: Pick<StonePatch, 'row' | 'column'> & { readonly id: string },
): PatchMark | null {
  const { id, row, column } = patch;
  if (row === null || column === null || (patchName(patch) === id && !/^row \d+, /.test(id))) return null;
  const step = stepOf(id);
  const parts = [
    counted(row, stroke),
    counted(column, point),
    ...(step === null ? [] : [counted(step, dash)]),
  ];
  let left = 1;
  const paths = parts.map(({ pathAt, width }) => {
    const path = pathAt(left);
    left += width + gap;
    return path;
  });
  return { path: paths.join(''), width: left - gap + 1, height };
}

/** How one and five are drawn from a place on, and how far the next stands. */
interface Sign {
  readonly one: (x: number) => string;
  readonly five: (x: number) => string;
  readonly wide: { readonly one: number; readonly five: number };
}

const stroke: Sign = {
  one: (x) => `M${x} 2.5V9`,
  five: (x) => `M${x + 1.5} 1V9M${x} 5H${x + 3}`,
  wide: { one: 3, five: 6 },
};
const point: Sign = {
  one: (x) => circle(x + 0.7, 6.5, 0.7),
  five: (x) => circle(x + 2.4, 6, 2.4),
  wide: { one: 4, five: 7.5 },
};
const dash: Sign = {
  one: (x) => `M${x} 9H${x + 3}`,
  five: (x) => `M${x} 9H${x + 4}M${x} 6H${x + 4}`,
  wide: { one: 5, five: 6 },
};

function counted(number: number, { one, five, wide }: Sign) {
  const [fives, ones] = [Math.floor(number / 5), number % 5];
  return {
    width: fives * wide.five + ones * wide.one - (ones > 0 ? wide.one : wide.five) + (ones > 0 ? 1.4 : 4.8),
    pathAt: (left: number) =>
      [
        ...Array.from({ length: fives }, (_, nth) => five(round(left + nth * wide.five))),
        ...Array.from({ length: ones }, (_, nth) => one(round(left + fives * wide.five + nth * wide.one))),
      ].join(''),
  };
}

function circle(x: number, y: number, radius: number): string {
  const turn = `a${radius} ${radius} 0 1 0 `;
  return `M${round(x - radius)} ${y}${turn}${2 * radius} 0${turn}${-2 * radius} 0`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
