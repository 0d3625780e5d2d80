import { deflateSync, inflateSync } from 'node:zlib';

/** Three numbers of eight bytes, as `writeToneMap` has it. */
const headBytes = 24;
const nothing = -32_768;
/** 0.01 of darkness: below what one cell is known to, and a sixth of the bytes. */
const step = 200;

/** A kept tone map with its tones in steps of 0.01, so that the demo stays small; `readToneMap` reads it alike. */
export function coarseMap(bytes: Uint8Array): Uint8Array {
  const steps = new Int16Array(new Uint8Array(inflateSync(bytes.subarray(headBytes))).buffer);
  const coarse = steps.map((value) => (value === nothing ? value : Math.round(value / step) * step));
  return Buffer.concat([
    bytes.subarray(0, headBytes),
    deflateSync(new Uint8Array(coarse.buffer), { level: 9 }),
  ]);
}
