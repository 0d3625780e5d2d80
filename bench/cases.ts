import { lowWater } from '../src/sample/render/layouts/lowWater.ts';
import { testSheet } from '../src/sample/render/layouts/testSheet.ts';
import { type PairCase, plainCase } from '../src/sample/render/pairCase.ts';
import { type Damage, faithfulTransfer, type ToneTransfer } from '../src/sample/render/printing.ts';
import { plainSensor } from '../src/sample/render/sensor.ts';

/** Lights gone below 10 %, darks shut above 85 %, strong gain: a print from a hard etch and soft ink. */
const harshTransfer: ToneTransfer = {
  lightsLost: [0.07, 0.2],
  darksClosed: [0.7, 0.9],
  gain: 0.07,
  full: 0.985,
};

const gentleTransfer: ToneTransfer = { ...faithfulTransfer, gain: 0.04 };

const portraitDamage: Damage = {
  patches: [
    { kind: 'lost', centreMm: [60, 150], radiiMm: [17, 12], amount: 0.97 },
    { kind: 'lost', centreMm: [232, 120], radiiMm: [14, 10], amount: 0.95 },
    { kind: 'closed', centreMm: [150, 100], radiiMm: [14, 16], amount: 0.98 },
    { kind: 'closed', centreMm: [150, 330], radiiMm: [18, 9], amount: 0.98 },
    { kind: 'scum', centreMm: [60, 275], radiiMm: [22, 16], amount: 0.1 },
  ],
  edgeScum: { coverage: 0.12, reachMm: 9 },
  uniformScum: 0,
};

const warmLamp = {
  ...plainSensor,
  cast: [1.06, 1, 0.86] as const,
  lightSlope: [0.12, 0.07] as const,
  falloff: 0.22,
};

/** All cases of the bench by name; each is made only when asked for. */
export const cases: Readonly<Record<string, () => PairCase>> = {
  plain: () => plainCase('plain', 101, testSheet(5)),
  'low-water': () => ({
    ...plainCase('low-water', 111, lowWater(7)),
    transfer: { ...gentleTransfer, lightsLost: [0.04, 0.14], darksClosed: [0.82, 0.98] },
  }),
  harsh: () => {
    const base = plainCase('harsh', 121, testSheet(5));
    return {
      ...base,
      transfer: harshTransfer,
      damage: portraitDamage,
      stone: { ...base.stone, sensor: warmLamp, tiltXDegrees: 9, rollDegrees: 4, table: 'planks' },
      print: {
        ...base.print,
        sensor: { ...warmLamp, lightSlope: [-0.08, 0.1] },
        tiltYDegrees: 8,
        table: 'felt',
      },
    };
  },
};
