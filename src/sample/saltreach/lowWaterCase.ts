import { lowWater } from '../render/layouts/lowWater.ts';
import { type PairCase, plainCase } from '../render/pairCase.ts';
import { plainSensor, type SensorSettings } from '../render/sensor.ts';

export const lowWaterTitle = 'Low Water, first trial proof';

/** A phone: a mild contrast curve and lamps a little warm, so that the chips have something to put right. */
const phone: SensorSettings = {
  ...plainSensor,
  contrast: 0.05,
  cast: [1.03, 1, 0.93],
  lightSlope: [0.07, -0.05],
  falloff: 0.14,
};

/**
 * The invented studio's first trial proof of "Low Water" from stone S-01: the lightest steps went in the etch, the
 * darkest closed, a gum drip took a place out of the sky, a corner of the mud filled in, and bare water caught scum.
 */
export function lowWaterCase(): PairCase {
  const base = plainCase('low-water', 1207, lowWater(1207));
  return {
    ...base,
    megapixels: 5,
    transfer: { lightsLost: [0.06, 0.17], darksClosed: [0.74, 0.9], gain: 0.045, full: 0.988 },
    damage: {
      patches: [
        { kind: 'lost', centreMm: [152, 66], radiiMm: [15, 11], amount: 0.97 },
        { kind: 'closed', centreMm: [236, 212], radiiMm: [24, 13], amount: 0.98 },
        { kind: 'scum', centreMm: [238, 146], radiiMm: [26, 10], amount: 0.1 },
      ],
      edgeScum: null,
      uniformScum: 0,
    },
    stone: { ...base.stone, sensor: phone, rollDegrees: 1.2 },
    print: {
      ...base.print,
      sensor: { ...phone, lightSlope: [-0.06, 0.04] },
      rollDegrees: -1.8,
      table: 'planks',
    },
    chips: true,
    cornerErrorMm: 2.5,
    files: { kind: 'jpeg', quality: 88, exifOrientation: 1 },
  };
}
