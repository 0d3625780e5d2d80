import { expect, it } from 'vitest';
import { readToneMap, writeToneMap } from './toneMapFile.ts';

it('comes back as it was, wherever in memory its bytes lie', () => {
  const frame = { widthPx: 3, heightPx: 2, pxPerMm: 2, originMm: [0, 0] as const };
  const data = Float32Array.of(0, 0.25, 1, Number.NaN, -0.01, 0.9);
  const deviation = Float32Array.of(0.003, 0.004, Number.NaN, 0.01, 0.02, 0.5);
  const written = writeToneMap({ ...frame, data, deviation });
  const shifted = new Uint8Array(written.length + 3);
  shifted.set(written, 3);
  const read = readToneMap(Buffer.from(shifted.buffer, 3));
  expect(read).toMatchObject(frame);
  for (const [kept, given] of [
    [read.data, data],
    [read.deviation, deviation],
  ] as const) {
    for (const [i, value] of given.entries()) {
      if (Number.isNaN(value)) expect(kept[i]).toBeNaN();
      else expect(kept[i]).toBeCloseTo(value, 4);
    }
  }
});
