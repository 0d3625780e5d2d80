import { deflateSync, inflateSync } from 'node:zlib';
import type { CoverageMap } from './coverageMaps.ts';

/** Steps of a kept tone: fine against any uncertainty, and 1.6 still fits. */
const stepsPerUnit = 20_000;
const nothing = -32_768;
/** Three numbers of eight bytes. */
const headBytes = 24;
/** Fast: a map is written while somebody waits. */
const level = 1;

/** A tone map as bytes: width, height and px per mm, then tones and their standard deviations in 16 bits, deflated. */
export function writeToneMap({ widthPx, heightPx, pxPerMm, data, deviation }: CoverageMap): Uint8Array {
  const count = widthPx * heightPx;
  const steps = new Int16Array(2 * count);
  for (let i = 0; i < count; i++) {
    steps[i] = stepsOf(data[i]!);
    steps[count + i] = stepsOf(deviation[i]!);
  }
  const head = Float64Array.of(widthPx, heightPx, pxPerMm);
  const packed = deflateSync(new Uint8Array(steps.buffer), { level });
  return Buffer.concat([new Uint8Array(head.buffer), packed]);
}

/** Reads what `writeToneMap` wrote. */
export function readToneMap(bytes: Uint8Array): CoverageMap {
  // copied, since what was read from a file may begin anywhere in a larger piece of memory
  const head = new Float64Array(new Uint8Array(bytes.subarray(0, headBytes)).buffer);
  const [widthPx, heightPx, pxPerMm] = [head[0]!, head[1]!, head[2]!];
  const steps = new Int16Array(new Uint8Array(inflateSync(bytes.subarray(headBytes))).buffer);
  const count = widthPx * heightPx;
  const values = (from: number) =>
    Float32Array.from({ length: count }, (_, i) =>
      steps[from + i] === nothing ? Number.NaN : steps[from + i]! / stepsPerUnit,
    );
  return { widthPx, heightPx, pxPerMm, originMm: [0, 0], data: values(0), deviation: values(count) };
}

function stepsOf(value: number): number {
  if (Number.isNaN(value)) return nothing;
  return Math.max(nothing + 1, Math.min(32_767, Math.round(value * stepsPerUnit)));
}
