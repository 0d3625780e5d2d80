import { photographPxPerFramePx, rowMapper } from '../operations/mapPoint.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { Frame } from '../raster.ts';

/** One halving of a photograph's brightness; codes scaled to 16 bits. */
interface Level {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly codes: Uint16Array;
}

/**
 * A photograph with its halvings, for finding places, not for tone: brightness in gamma-coded units 0..65,535.
 * Level k has pixels 2^k times as large; place x of the photograph is x / 2^k there.
 */
export interface GreyPyramid {
  readonly photo: Photograph;
  /** Level 1 first; level 0 is the photograph itself. */
  readonly halvings: readonly Level[];
}

/** Weights of red, green and blue in brightness, in 256ths (rounded from ITU-R BT.709). */
const redShare = 54;
const greenShare = 183;
const blueShare = 19;

function halvePhotograph(photo: Photograph): Level {
  const { codes, channels, widthPx } = photo;
  const width = widthPx >> 1;
  const height = photo.heightPx >> 1;
  const out = new Uint16Array(width * height);
  const depth = codes instanceof Uint16Array ? 1 / 1024 : 257 / 1024;
  const stride = widthPx * channels;
  for (let y = 0; y < height; y++) {
    let at = 2 * y * stride;
    for (let x = 0; x < width; x++, at += 2 * channels) {
      const below = at + stride;
      if (channels === 1) {
        out[y * width + x] = (codes[at]! + codes[at + 1]! + codes[below]! + codes[below + 1]!) * depth * 256;
        continue;
      }
      const red = codes[at]! + codes[at + 3]! + codes[below]! + codes[below + 3]!;
      const green = codes[at + 1]! + codes[at + 4]! + codes[below + 1]! + codes[below + 4]!;
      const blue = codes[at + 2]! + codes[at + 5]! + codes[below + 2]! + codes[below + 5]!;
      out[y * width + x] = (redShare * red + greenShare * green + blueShare * blue) * depth;
    }
  }
  return { widthPx: width, heightPx: height, codes: out };
}

function halveLevel(level: Level): Level {
  const width = level.widthPx >> 1;
  const height = level.heightPx >> 1;
  const out = new Uint16Array(width * height);
  for (let y = 0; y < height; y++) {
    let at = 2 * y * level.widthPx;
    for (let x = 0; x < width; x++, at += 2) {
      const below = at + level.widthPx;
      out[y * width + x] =
        (level.codes[at]! + level.codes[at + 1]! + level.codes[below]! + level.codes[below + 1]! + 2) >> 2;
    }
  }
  return { widthPx: width, heightPx: height, codes: out };
}

/** Builds the halvings down to about 200 px on the shorter side. Memory: about two thirds of a byte a photograph px. */
export function buildGreyPyramid(photo: Photograph): GreyPyramid {
  const halvings: Level[] = [halvePhotograph(photo)];
  for (let level = halvings[0]!; Math.min(level.widthPx, level.heightPx) > 400; ) {
    level = halveLevel(level);
    halvings.push(level);
  }
  return { photo, halvings };
}

/** The level whose pixels are nearest to the frame's in size without being much larger. */
function levelFor(pyramid: GreyPyramid, map: PlaneMap, frame: Frame): number {
  const ratio = photographPxPerFramePx(map, frame);
  return Math.max(0, Math.min(pyramid.halvings.length, Math.round(Math.log2(Math.max(ratio, 1e-6)) - 0.2)));
}

/**
 * Samples brightness in a frame from the level that suits it, bilinearly.
 * @returns numbers 0..1 in gamma-coded units; NaN outside the photograph.
 */
export function samplePyramid(pyramid: GreyPyramid, map: PlaneMap, frame: Frame): Float32Array {
  const level = levelFor(pyramid, map, frame);
  const out = new Float32Array(frame.widthPx * frame.heightPx);
  if (level > 0) sampleLevel(pyramid.halvings[level - 1]!, 1 / 2 ** level, map, frame, out);
  else samplePhotograph(pyramid.photo, map, frame, out);
  return out;
}

function sampleLevel(level: Level, scale: number, map: PlaneMap, frame: Frame, out: Float32Array): void {
  const { codes, widthPx, heightPx } = level;
  const xs = new Float64Array(frame.widthPx);
  const ys = new Float64Array(frame.widthPx);
  const mapRow = rowMapper(map, frame);
  for (let row = 0, index = 0; row < frame.heightPx; row++) {
    mapRow(row, xs, ys);
    for (let i = 0; i < frame.widthPx; i++, index++) {
      const x = xs[i]! * scale - 0.5;
      const y = ys[i]! * scale - 0.5;
      if (!(x >= 0 && y >= 0 && x < widthPx - 1 && y < heightPx - 1)) {
        out[index] = Number.NaN;
        continue;
      }
      const left = x | 0;
      const top = y | 0;
      const fx = x - left;
      const fy = y - top;
      const at = top * widthPx + left;
      const upper = codes[at]! + fx * (codes[at + 1]! - codes[at]!);
      const lower = codes[at + widthPx]! + fx * (codes[at + widthPx + 1]! - codes[at + widthPx]!);
      out[index] = (upper + fy * (lower - upper)) / 65535;
    }
  }
}

function samplePhotograph(photo: Photograph, map: PlaneMap, frame: Frame, out: Float32Array): void {
  const { codes, channels, widthPx, heightPx } = photo;
  const unit = (codes instanceof Uint16Array ? 1 / 65535 : 1 / 255) / 256;
  const stride = widthPx * channels;
  const xs = new Float64Array(frame.widthPx);
  const ys = new Float64Array(frame.widthPx);
  const mapRow = rowMapper(map, frame);
  const grey = channels === 1;
  const brightness = (at: number): number =>
    grey
      ? codes[at]! * 256
      : redShare * codes[at]! + greenShare * codes[at + 1]! + blueShare * codes[at + 2]!;
  for (let row = 0, index = 0; row < frame.heightPx; row++) {
    mapRow(row, xs, ys);
    for (let i = 0; i < frame.widthPx; i++, index++) {
      const x = xs[i]! - 0.5;
      const y = ys[i]! - 0.5;
      if (!(x >= 0 && y >= 0 && x < widthPx - 1 && y < heightPx - 1)) {
        out[index] = Number.NaN;
        continue;
      }
      const left = x | 0;
      const top = y | 0;
      const fx = x - left;
      const fy = y - top;
      const at = top * stride + left * channels;
      const topLeft = brightness(at);
      const bottomLeft = brightness(at + stride);
      const upper = topLeft + fx * (brightness(at + channels) - topLeft);
      const lower = bottomLeft + fx * (brightness(at + stride + channels) - bottomLeft);
      out[index] = (upper + fy * (lower - upper)) * unit;
    }
  }
}
