import type { Point } from '../../../science/geometry/point.ts';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';

/** What is to be photographed. */
export interface PhotographedThing {
  /** As it is called on the page. */
  readonly name: string;
  /** Width and height of what fills the guide, mm; null: not known. */
  readonly sizeMm: Point | null;
  /** What that size is of. */
  readonly sizeOf: 'stone' | 'rectangle' | 'sheet';
}

/** What is to fill the guide, and how large it is. */
export function guideWords({ sizeMm, sizeOf }: PhotographedThing, turned: boolean): string {
  if (sizeMm === null) return say('Its size is not known: the frame has the picture’s own proportion.');
  const size = sizeWords(Math.round(sizeMm[0]), Math.round(sizeMm[1]));
  if (sizeOf === 'stone')
    return turned
      ? say('The stone fills the frame, a quarter turn round: {size}.', { size })
      : say('The stone fills the frame: {size}.', { size });
  if (sizeOf === 'sheet')
    return turned
      ? say('The sheet fills the frame, a quarter turn round: {size}.', { size })
      : say('The sheet fills the frame: {size}.', { size });
  return turned
    ? say('The work rectangle fills the frame, a quarter turn round: {size}.', { size })
    : say('The work rectangle fills the frame: {size}.', { size });
}
