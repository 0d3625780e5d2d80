import { describe, expect, it } from 'vitest';
import { measureComparison } from '../../src/application/measureComparison.ts';
import { decodePhotograph } from '../../src/imaging/codecs/decodePhotograph.ts';
import { encodePicture } from '../../src/sample/render/encodePicture.ts';
import { renderPair } from '../../src/sample/render/renderPair.ts';
import { lowWaterCase } from '../../src/sample/saltreach/lowWaterCase.ts';
import { loadSampleComparison, sampleMeasureInput } from '../../src/sample/saltreach/sampleComparison.ts';

function toDecimals(value: unknown, decimals: number): unknown {
  const shorten = (_key: string, entry: unknown) =>
    typeof entry === 'number' ? Number(entry.toFixed(decimals)) : entry;
  return JSON.parse(JSON.stringify(value, shorten));
}

/** Numbers to four decimals: what differs further back is the machine's rounding, not the measurement. */
const rounded = (value: unknown) => toDecimals(value, 4);

/** As request.json keeps them. */
const shortened = (value: unknown) => toDecimals(value, 3);

describe('the demo pair "Low Water"', () => {
  it('is kept as it is rendered (npm run sample:render)', { timeout: 120_000 }, async () => {
    const pair = lowWaterCase();
    const rendered = renderPair(pair);
    const kept = await sampleMeasureInput();
    for (const [name, side] of [
      ['stone', kept.stone],
      ['print', kept.proof],
    ] as const) {
      const fresh = await decoded(await encodePicture(rendered.take(name), pair.files));
      const old = await decoded(side.bytes);
      expect([old.widthPx, old.heightPx]).toEqual([fresh.widthPx, fresh.heightPx]);
      let difference = 0;
      for (let i = 0; i < fresh.codes.length; i++) difference += Math.abs(fresh.codes[i]! - old.codes[i]!);
      // Another build of the JPEG library may round differently, which stays far below one code on average.
      expect(difference / fresh.codes.length).toBeLessThan(0.25);
      expect(side.corners).toEqual(shortened(rendered.cornersPx(name)));
    }
    expect(kept.zones).toEqual(shortened(pair.drawing.zones));
  });

  it('is kept as it is measured (npm run sample:measure)', { timeout: 300_000 }, async () => {
    const kept = await loadSampleComparison();
    const measured = await measureComparison(
      await sampleMeasureInput(),
      {
        progress: () => undefined,
        stopped: () => false,
      },
      new Date('2026-11-26T09:40:00Z'),
    );
    if (!measured.ok) throw new Error(measured.error.message);
    expect(rounded(measured.value.record)).toEqual(rounded(kept.record));
    expect([...measured.value.files.keys()].sort()).toEqual([...kept.files.keys()].sort());
  });
});

async function decoded(bytes: Uint8Array) {
  const picture = await decodePhotograph(bytes, 'low-water.jpg');
  if (!picture.ok) throw new Error(picture.error.message);
  return picture.value;
}
