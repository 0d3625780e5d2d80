import type { Point } from '../../science/geometry/point.ts';
import type { Photograph } from '../photograph.ts';
import type { PlaneMap } from '../planeMap.ts';
import type { ColourRaster, Frame, Raster } from '../raster.ts';
import { photographPxPerFramePx, rowMapper } from './mapPoint.ts';

/** The share of each channel in a grey: sRGB luminance (IEC 61966-2-1). */
const luminance = [0.2126, 0.7152, 0.0722] as const;

/** How far apart taps stand where the photograph is much finer than the frame, px. */
const wideTapPx = 1.4;
/** Most taps along one side of a pixel's footprint; beyond it a photograph is far finer than the frame. */
const mostTaps = 12;

/** An empty plane whose memory other threads can share. */
export function sharedPlane(frame: Frame): Float32Array {
  return new Float32Array(new SharedArrayBuffer(frame.widthPx * frame.heightPx * 4));
}

/** A band of rows of a frame, `from` included, `to` not; lets several threads fill one raster. */
export interface RowBand {
  readonly from: number;
  readonly to: number;
}

/**
 * Samples a photograph in the stone's frame, in linear light, averaging over each pixel's footprint: bilinear taps about
 * one photograph px apart, so that the mean reflectance is kept where the photograph is finer than the frame.
 * @returns three planes (a grey photograph fills all three alike); NaN where any tap falls outside the photograph's pixel centres
 *   by more than half a pixel. Planes are backed by shared memory.
 */
export function sampleLinear(photo: Photograph, map: PlaneMap, frame: Frame): ColourRaster {
  const planes = [sharedPlane(frame), sharedPlane(frame), sharedPlane(frame)] as const;
  sampleLinearRows(photo, map, frame, planes, { from: 0, to: frame.heightPx });
  return { ...frame, planes };
}

/** Like `sampleLinear`, one plane of luminance (Y of sRGB). */
export function sampleGrey(photo: Photograph, map: PlaneMap, frame: Frame): Raster {
  const data = sharedPlane(frame);
  sampleGreyRows(photo, map, frame, data, { from: 0, to: frame.heightPx });
  return { ...frame, data };
}

/** The taps of one pixel: how many along a side, and how they are spread in frame px. */
function tapsOf(map: PlaneMap, frame: Frame): number {
  const ratio = photographPxPerFramePx(map, frame);
  // A bilinear tap is two px wide by itself: once there are several, they may stand a little further apart.
  return Math.max(1, Math.min(mostTaps, Math.round(ratio < 2 ? ratio : ratio / wideTapPx)));
}

/** The frame `taps` times as fine, on whose pixel centres the taps lie. */
function tapFrame(frame: Frame, taps: number): Frame {
  return {
    widthPx: frame.widthPx * taps,
    heightPx: frame.heightPx * taps,
    pxPerMm: frame.pxPerMm * taps,
    originMm: frame.originMm,
  };
}

/** Fills some rows of three planes of the frame's size; see `sampleLinear`. */
export function sampleLinearRows(
  photo: Photograph,
  map: PlaneMap,
  frame: Frame,
  planes: readonly [Float32Array, Float32Array, Float32Array],
  band: RowBand,
): void {
  const taps = tapsOf(map, frame);
  const fine = tapFrame(frame, taps);
  const mapRow = rowMapper(map, fine);
  const xs = new Float64Array(fine.widthPx);
  const ys = new Float64Array(fine.widthPx);
  const { codes, toLinear, channels, widthPx, heightPx } = photo;
  const stride = widthPx * channels;
  const second = channels === 3 ? 1 : 0;
  const third = channels === 3 ? 2 : 0;
  const [red, green, blue] = planes;
  const share = 1 / (taps * taps);
  const { widthPx: width } = frame;
  for (let row = band.from; row < band.to; row++) {
    const start = row * width;
    for (let tapRow = 0; tapRow < taps; tapRow++) {
      mapRow(row * taps + tapRow, xs, ys);
      for (let column = 0, tap = 0; column < width; column++) {
        let sumRed = 0;
        let sumGreen = 0;
        let sumBlue = 0;
        for (let end = tap + taps; tap < end; tap++) {
          const x = xs[tap]!;
          const y = ys[tap]!;
          if (!(x >= 0 && y >= 0 && x <= widthPx && y <= heightPx)) {
            sumRed = Number.NaN;
            sumGreen = Number.NaN;
            sumBlue = Number.NaN;
            tap = end;
            break;
          }
          const px = Math.min(Math.max(x - 0.5, 0), widthPx - 1.001);
          const py = Math.min(Math.max(y - 0.5, 0), heightPx - 1.001);
          const left = px | 0;
          const top = py | 0;
          const fx = px - left;
          const fy = py - top;
          const at = top * stride + left * channels;
          const below = at + stride;
          const w00 = (1 - fx) * (1 - fy);
          const w10 = fx * (1 - fy);
          const w01 = (1 - fx) * fy;
          const w11 = fx * fy;
          sumRed +=
            w00 * toLinear[codes[at]!]! +
            w10 * toLinear[codes[at + channels]!]! +
            w01 * toLinear[codes[below]!]! +
            w11 * toLinear[codes[below + channels]!]!;
          sumGreen +=
            w00 * toLinear[codes[at + second]!]! +
            w10 * toLinear[codes[at + channels + second]!]! +
            w01 * toLinear[codes[below + second]!]! +
            w11 * toLinear[codes[below + channels + second]!]!;
          sumBlue +=
            w00 * toLinear[codes[at + third]!]! +
            w10 * toLinear[codes[at + channels + third]!]! +
            w01 * toLinear[codes[below + third]!]! +
            w11 * toLinear[codes[below + channels + third]!]!;
        }
        const index = start + column;
        if (tapRow === 0) {
          red[index] = sumRed * share;
          green[index] = sumGreen * share;
          blue[index] = sumBlue * share;
        } else {
          red[index]! += sumRed * share;
          green[index]! += sumGreen * share;
          blue[index]! += sumBlue * share;
        }
      }
    }
  }
}

/** Rows sampled in colour at a time on the way to luminance. */
const stripRows = 32;

/** Fills some rows of one plane of the frame's size with luminance; see `sampleGrey`. */
export function sampleGreyRows(
  photo: Photograph,
  map: PlaneMap,
  frame: Frame,
  plane: Float32Array,
  band: RowBand,
): void {
  const width = frame.widthPx;
  const strip = () => new Float32Array(width * stripRows);
  const planes = [strip(), strip(), strip()] as const;
  for (let from = band.from; from < band.to; from += stripRows) {
    const rows = Math.min(stripRows, band.to - from);
    const originMm: Point = [frame.originMm[0], frame.originMm[1] + from / frame.pxPerMm];
    sampleLinearRows(photo, map, { ...frame, heightPx: rows, originMm }, planes, { from: 0, to: rows });
    const start = from * width;
    for (let i = 0; i < rows * width; i++) {
      plane[start + i] =
        luminance[0] * planes[0][i]! + luminance[1] * planes[1][i]! + luminance[2] * planes[2][i]!;
    }
  }
}
