import { lowWater } from '../src/sample/render/layouts/lowWater.ts';
import { testSheet } from '../src/sample/render/layouts/testSheet.ts';
import { wovenSheet } from '../src/sample/render/layouts/wovenSheet.ts';
import { type PairCase, plainCase } from '../src/sample/render/pairCase.ts';
import { type Damage, faithfulTransfer, noDamage, type ToneTransfer } from '../src/sample/render/printing.ts';
import { plainSensor, type SensorSettings } from '../src/sample/render/sensor.ts';
import type { BenchKind } from './benchPair.ts';
import { scannedSheet } from './scannedSheet.ts';

/** Lights gone, darks shut, strong gain: a print from a hard etch and soft ink. */
const harshTransfer: ToneTransfer = {
  lightsLost: [0.07, 0.2],
  darksClosed: [0.7, 0.9],
  gain: 0.07,
  full: 0.985,
};
const gentleTransfer: ToneTransfer = {
  ...faithfulTransfer,
  gain: 0.03,
  lightsLost: [0.03, 0.09],
  darksClosed: [0.88, 1],
};
/** What was drawn is printed, cell upon cell. */
const sameTransfer: ToneTransfer = { ...faithfulTransfer, full: 1 };

const portraitDamage: Damage = {
  patches: [
    { kind: 'lost', centreMm: [60, 150], radiiMm: [17, 12], amount: 0.97 },
    { kind: 'lost', centreMm: [232, 120], radiiMm: [14, 10], amount: 0.95 },
    { kind: 'closed', centreMm: [150, 100], radiiMm: [14, 16], amount: 0.98 },
    { kind: 'closed', centreMm: [150, 330], radiiMm: [18, 9], amount: 0.98 },
    { kind: 'scum', centreMm: [60, 275], radiiMm: [22, 16], amount: 0.1 },
  ],
  edgeScum: { coverage: 0.12, reachMm: 9, sides: ['right', 'bottom'] },
  uniformScum: 0,
};

const landscapeDamage: Damage = {
  patches: [
    { kind: 'lost', centreMm: [180, 60], radiiMm: [20, 14], amount: 0.96 },
    { kind: 'closed', centreMm: [200, 215], radiiMm: [22, 12], amount: 0.98 },
    { kind: 'scum', centreMm: [230, 146], radiiMm: [24, 9], amount: 0.09 },
  ],
  edgeScum: null,
  uniformScum: 0,
};

const scanDamage: Damage = {
  patches: [
    { kind: 'lost', centreMm: [110, 130], radiiMm: [18, 14], amount: 0.96 },
    { kind: 'closed', centreMm: [190, 190], radiiMm: [16, 16], amount: 0.98 },
    { kind: 'scum', centreMm: [32, 60], radiiMm: [16, 22], amount: 0.08 },
  ],
  edgeScum: null,
  uniformScum: 0,
};

const warmLamp: SensorSettings = {
  ...plainSensor,
  cast: [1.06, 1, 0.86],
  lightSlope: [0.12, 0.07],
  falloff: 0.22,
};
const phoneCurve: SensorSettings = { ...plainSensor, contrast: 0.09 };

function plain(name: string, seed: number, changes: Partial<PairCase> = {}): PairCase {
  return { ...plainCase(name, seed, testSheet(seed)), megapixels: 9, transfer: gentleTransfer, ...changes };
}

function withSensor(pair: PairCase, sensor: SensorSettings): PairCase {
  return { ...pair, stone: { ...pair.stone, sensor }, print: { ...pair.print, sensor } };
}

/** All cases of the bench by name; each is made only when asked for. */
export const cases: Readonly<Record<string, () => PairCase | Promise<PairCase>>> = {
  plain: () => plain('plain', 101, { damage: portraitDamage }),
  'no-change': () => plain('no-change', 102, { transfer: sameTransfer }),
  'low-water': () => ({
    ...plain('low-water', 103),
    drawing: lowWater(103),
    damage: landscapeDamage,
    stoneColour: 'grey',
  }),
  harsh: () => {
    const base = plain('harsh', 104, { transfer: harshTransfer, damage: portraitDamage });
    return {
      ...base,
      cornerErrorMm: 10,
      stone: { ...base.stone, sensor: warmLamp, tiltXDegrees: 9, rollDegrees: 4, table: 'planks' },
      print: {
        ...base.print,
        sensor: { ...warmLamp, lightSlope: [-0.08, 0.1] },
        tiltYDegrees: 8,
        table: 'felt',
      },
    };
  },
  'chips-on-a-curve': () =>
    withSensor(
      { ...plain('chips-on-a-curve', 105, { damage: landscapeDamage, chips: true }), drawing: lowWater(105) },
      phoneCurve,
    ),
  'curve-without-chips': () =>
    withSensor(plain('curve-without-chips', 106, { damage: portraitDamage }), phoneCurve),
  'wrong-way-round': () => plain('wrong-way-round', 107, { mirrored: false, verdict: 'unmirrored' }),
  'another-stone': () =>
    plain('another-stone', 108, {
      printedDrawing: { ...lowWater(108), sizeMm: [300, 400] },
      verdict: 'no-match',
    }),
  'half-missing': () =>
    plain('half-missing', 109, {
      sheetMarginsMm: [-140, 30, 38, 44],
      damage: portraitDamage,
      warnings: ['partial'],
    }),
  overexposed: () => {
    const base = plain('overexposed', 110, { warnings: ['overexposed'] });
    return { ...base, print: { ...base.print, sensor: { ...plainSensor, exposure: 1.75 } } };
  },
  blurred: () => {
    const base = plain('blurred', 111, { warnings: ['blurred'] });
    return { ...base, print: { ...base.print, sensor: { ...plainSensor, blurPx: 5 } } };
  },
  glare: () => {
    const base = plain('glare', 121, { warnings: ['glare'] });
    const glare = { at: [0.2, -0.3], radius: 0.09, light: 0.9 } as const;
    return { ...base, stone: { ...base.stone, sensor: { ...plainSensor, glare } } };
  },
  'strong-cast': () => {
    const base = plain('strong-cast', 122, { warnings: ['cast'] });
    return { ...base, print: { ...base.print, sensor: { ...plainSensor, cast: [1.12, 0.82, 0.4] } } };
  },
  'scum-all-round': () =>
    plain('scum-all-round', 123, {
      damage: {
        ...noDamage,
        edgeScum: { coverage: 0.12, reachMm: 9, sides: ['left', 'top', 'right', 'bottom'] },
      },
    }),
  'plain-24mp': () => plain('plain-24mp', 124, { megapixels: 24, cellsPerMm: 10, damage: portraitDamage }),
  'periodic-24mp': () => ({
    ...plain('periodic-24mp', 112, { megapixels: 24, cellsPerMm: 10, cornerErrorMm: 8 }),
    drawing: wovenSheet(112),
  }),
  'no-marks': () => ({
    ...plain('no-marks', 113, { damage: portraitDamage }),
    drawing: testSheet(113, false),
  }),
  'no-corners-given': () => {
    const base = plain('no-corners-given', 114, { cornersGiven: false, warnings: ['corners-found'] });
    // The print lies upside down on the table.
    return { ...base, print: { ...base.print, rollDegrees: 177 } };
  },
  'sixteen-bit': () =>
    withSensor(
      plain('sixteen-bit', 115, {
        megapixels: 6,
        damage: portraitDamage,
        files: { kind: 'tiff16', quality: 100, exifOrientation: 1 },
      }),
      { ...plainSensor, bits: 16 },
    ),
  'turned-by-exif': () =>
    plain('turned-by-exif', 116, {
      files: { kind: 'jpeg', quality: 92, exifOrientation: 6 },
      damage: portraitDamage,
    }),
  'scan-head': async () => ({
    ...plain('scan-head', 117, { damage: scanDamage }),
    drawing: await scannedSheet('maclise-plate-09-head.jpg', [300, 400], 117),
  }),
  'scan-orchid': async () => ({
    ...plain('scan-orchid', 118, { damage: scanDamage }),
    drawing: await scannedSheet('fitch-odontoglossum-plate-13b.jpg', [400, 300], 118),
  }),
  repeats: () => plain('repeats', 119, { repeats: true, damage: portraitDamage }),
  'faint-scum': () => plain('faint-scum', 120, { damage: { ...noDamage, uniformScum: 0.065 }, flats: true }),
};

/** The small set: at 2 megapixels a pixel is wider than a third of a millimetre, of which the engine must warn. */
export async function smallCase(name: string): Promise<PairCase> {
  const pair = await cases[name]!();
  return {
    ...pair,
    megapixels: 2,
    // Still nearly twice as fine as the pixels, and half the work of painting.
    cellsPerMm: 6,
    warnings: pair.verdict === 'ok' ? [...pair.warnings, 'few-pixels'] : pair.warnings,
  };
}

export const smallCases = ['plain', 'no-change', 'wrong-way-round', 'another-stone', 'half-missing'] as const;

/** Which limits a case is held to. */
export function kindOf(name: string): BenchKind {
  if (name.startsWith('scan-')) return 'scan';
  if (name === 'curve-without-chips') return 'curve without chips';
  if (name === 'no-change') return 'no change';
  if (['overexposed', 'blurred', 'glare'].includes(name)) return 'spoiled';
  return name === 'no-corners-given' ? 'no corners' : 'usual';
}
