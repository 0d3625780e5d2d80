import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { camera } from './camera.ts';
import { sheetMap } from './dampStretch.ts';
import { grainBreaker } from './grainBreaker.ts';
import { faithfulTransfer, transferTone } from './printing.ts';

const millimetres = fc.tuple(
  fc.double({ min: -40, max: 340, noNaN: true }),
  fc.double({ min: -40, max: 440, noNaN: true }),
);

describe('the camera', () => {
  it('finds every place again, lens bend and tilt included', () => {
    const tilt = fc.double({ min: -15, max: 15, noNaN: true });
    fc.assert(
      fc.property(
        millimetres,
        tilt,
        tilt,
        fc.double({ min: -180, max: 180, noNaN: true }),
        (mm, x, y, roll) => {
          const seen = camera({
            widthPx: 3000,
            heightPx: 4000,
            pxPerMm: 7,
            distanceMm: 700,
            centreMm: [150, 200],
            rollDegrees: roll,
            tiltXDegrees: x,
            tiltYDegrees: y,
            lensBend: 0.004,
          });
          const back = seen.toPlaneMm(seen.toPx(mm));
          expect(Math.hypot(back[0] - mm[0], back[1] - mm[1])).toBeLessThan(1e-6);
        },
      ),
    );
  });
});

describe('the damp sheet', () => {
  it('leads back to the stone, mirrored or not', () => {
    fc.assert(
      fc.property(millimetres, fc.integer({ min: 1, max: 999 }), fc.boolean(), (mm, seed, mirrored) => {
        const sheet = sheetMap({ growth: [0.02, 0.005], unevenMm: 1, seed }, [300, 400], mirrored);
        const back = sheet.toStoneMm(sheet.toSheetMm(mm));
        expect(Math.hypot(back[0] - mm[0], back[1] - mm[1])).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('tones on grain', () => {
  it.each([0.9, 2, 5])('cover on average what was asked, slope %f', (slope) => {
    const breaker = grainBreaker(slope);
    for (const tone of [0, 0.03, 0.2, 0.5, 0.77, 0.98, 1]) {
      let sum = 0;
      for (let i = 0; i < 10_000; i++) sum += breaker(tone, (i + 0.5) / 10_000);
      expect(Math.abs(sum / 10_000 - tone)).toBeLessThan(0.001);
    }
  });
});

describe('the tone transfer', () => {
  it('loses lights, shuts darks and leaves bare stone bare', () => {
    const harsh = { lightsLost: [0.07, 0.2], darksClosed: [0.7, 0.9], gain: 0.05, full: 0.985 } as const;
    expect(transferTone(harsh, 0)).toBe(0);
    expect(transferTone(harsh, 0.06)).toBe(0);
    expect(transferTone(harsh, 0.9)).toBe(0.985);
    expect(transferTone(harsh, 0.5)).toBeCloseTo(0.55, 10);
    expect(transferTone({ ...faithfulTransfer, full: 1 }, 0.4)).toBeCloseTo(0.4, 10);
  });
});
