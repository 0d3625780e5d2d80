import { srgbToLinear } from '../../../science/colour/srgbTransfer.ts';
import type { CameraFrame, FrameBox } from './cameraFrame.ts';

/** The light within the guide. */
export interface Exposure {
  /** Share 0..1 of pixels with a channel at 254 or 255: tones there are burnt out. */
  readonly whites: number;
  /** Share 0..1 of pixels with all channels at 0 or 1. */
  readonly blacks: number;
  /** Light of the left third over that of the right, percent of their mean: above 0 the left is lighter. */
  readonly leftPercent: number;
  /** Light of the upper third over that of the lower, percent of their mean: above 0 the upper is lighter. */
  readonly headPercent: number;
  /** Share 0..1 of the guide that shines: clearly lighter than bare ground around it and in the whole guide. */
  readonly glare: number;
}

/** The lightest tenth of a place is taken for bare ground, which the drawing leaves alone: our rule. */
const bareShare = 0.9;
/** The guide is looked at in so many places each way. */
const places = 12;
/** A place shines where its ground is this much lighter than that around it: our rule. */
const glareFactor = 1.3;

const linear = Float32Array.from({ length: 256 }, (_, code) => srgbToLinear(code / 255));

/** Reads exposure, evenness and glare within a box of a frame. Our rules, unpublished; light is linear. */
export function exposureOf(frame: CameraFrame, box: FrameBox): Exposure {
  let whites = 0;
  let blacks = 0;
  for (let y = box.top; y < box.bottom; y++)
    for (let x = box.left; x < box.right; x++) {
      const at = 4 * (y * frame.widthPx + x);
      const [red, green, blue] = [frame.rgba[at]!, frame.rgba[at + 1]!, frame.rgba[at + 2]!];
      if (Math.max(red, green, blue) >= 254) whites++;
      else if (Math.max(red, green, blue) <= 1) blacks++;
    }
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const [thirdX, thirdY] = [Math.max(1, Math.round(width / 3)), Math.max(1, Math.round(height / 3))];
  return {
    whites: whites / (width * height),
    blacks: blacks / (width * height),
    leftPercent: percentApart(
      bareLight(frame, { ...box, right: box.left + thirdX }),
      bareLight(frame, { ...box, left: box.right - thirdX }),
    ),
    headPercent: percentApart(
      bareLight(frame, { ...box, bottom: box.top + thirdY }),
      bareLight(frame, { ...box, top: box.bottom - thirdY }),
    ),
    glare: glareShare(frame, box),
  };
}

/** Linear light 0..1 of the bare ground in a box: the `bareShare` quantile, read from a histogram of grey codes. */
function bareLight({ rgba, widthPx }: CameraFrame, box: FrameBox): number {
  const counts = new Uint32Array(256);
  let all = 0;
  for (let y = box.top; y < box.bottom; y++)
    for (let x = box.left; x < box.right; x++) {
      const at = 4 * (y * widthPx + x);
      counts[Math.round(0.2126 * rgba[at]! + 0.7152 * rgba[at + 1]! + 0.0722 * rgba[at + 2]!)]!++;
      all++;
    }
  let below = 0;
  for (let code = 0; code < 256; code++) {
    const here = counts[code]!;
    // Within one code the light is taken as spread evenly, so that the answer does not jump.
    if (below + here >= bareShare * all)
      return linear[code]! + ((bareShare * all - below) / here - 0.5) * stepAt(code);
    below += here;
  }
  return linear[255]!;
}

/** Width of one code in linear light. */
function stepAt(code: number): number {
  return (linear[Math.min(255, code + 1)]! - linear[Math.max(0, code - 1)]!) / 2;
}

function percentApart(a: number, b: number): number {
  return a + b <= 0 ? 0 : (100 * (a - b)) / ((a + b) / 2);
}

function glareShare(frame: CameraFrame, box: FrameBox): number {
  const edge = (from: number, to: number, i: number) => from + Math.round(((to - from) * i) / places);
  const light = Array.from({ length: places * places }, (_, i) => {
    const [column, row] = [i % places, Math.floor(i / places)];
    return bareLight(frame, {
      left: edge(box.left, box.right, column),
      right: Math.max(edge(box.left, box.right, column) + 1, edge(box.left, box.right, column + 1)),
      top: edge(box.top, box.bottom, row),
      bottom: Math.max(edge(box.top, box.bottom, row) + 1, edge(box.top, box.bottom, row + 1)),
    });
  });
  const usual = upperQuarter(light);
  const shining = light.filter((value, i) => {
    if (value < glareFactor * usual) return false;
    const [column, row] = [i % places, Math.floor(i / places)];
    const around = light.filter((_, j) => {
      const apart = Math.max(Math.abs((j % places) - column), Math.abs(Math.floor(j / places) - row));
      return apart > 0 && apart <= 3;
    });
    return value >= glareFactor * upperQuarter(around);
  });
  return shining.length / light.length;
}

function upperQuarter(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(0.75 * (values.length - 1))]!;
}
