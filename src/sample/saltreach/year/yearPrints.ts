import { type PairCase, plainCase } from '../../render/pairCase.ts';
import { type Damage, faithfulTransfer, noDamage, type ToneTransfer } from '../../render/printing.ts';
import { yearDrawing } from './yearDrawing.ts';
import { type YearWork, yearWorks } from './yearWorks.ts';

/** How the last proof of a work printed, and how large its photographs are. Invented. */
interface YearPrint {
  readonly work: string;
  readonly megapixels: number;
  readonly transfer: ToneTransfer;
  readonly patches: Damage['patches'];
}

const held: ToneTransfer = { ...faithfulTransfer, gain: 0.012, full: 0.988 };

/**
 * The works whose last proof was photographed and measured against the drawn stone: two that rested over night, three that
 * were washed out too soon.
 */
const yearPrints: readonly YearPrint[] = [
  { work: 'ebb', megapixels: 1.7, transfer: held, patches: [] },
  {
    work: 'flood-mark',
    megapixels: 1.3,
    transfer: { ...held, lightsLost: [0.11, 0.26] },
    patches: [],
  },
  {
    work: 'slip',
    megapixels: 1.4,
    transfer: { ...held, gain: 0 },
    patches: [
      { kind: 'lost', centreMm: [96, 150], radiiMm: [62, 26], amount: 0.8 },
      { kind: 'lost', centreMm: [226, 236], radiiMm: [48, 22], amount: 0.7 },
    ],
  },
  {
    work: 'test-washes',
    megapixels: 0.7,
    transfer: { ...held, lightsLost: [0.12, 0.28] },
    patches: [],
  },
  { work: 'mooring', megapixels: 1.4, transfer: { ...held, gain: 0.02 }, patches: [] },
];

/** Whether a work's last proof was measured. */
export function isMeasured(work: YearWork): boolean {
  return yearPrints.some((print) => print.work === work.id);
}

/** How the photographs of the year's measured works are rendered, in the order of the works. */
export function yearPrintCases(): readonly { readonly work: YearWork; readonly pair: PairCase }[] {
  return yearWorks.flatMap((work, index) => {
    const print = yearPrints.find((one) => one.work === work.id);
    return print ? [{ work, pair: pairOf(work, print, 2000 + 20 * index) }] : [];
  });
}

function pairOf(work: YearWork, { megapixels, transfer, patches }: YearPrint, seed: number): PairCase {
  const base = plainCase(`year-${work.id}`, seed, yearDrawing(work.title, work.zones, seed));
  return {
    ...base,
    megapixels,
    transfer,
    damage: { ...noDamage, patches },
    stoneColour: work.stone.startsWith('t') ? 'yellow' : 'grey',
    stone: { ...base.stone, rollDegrees: (seed % 7) / 3 - 1 },
    print: { ...base.print, rollDegrees: 1 - (seed % 11) / 4, table: 'planks' },
    cornerErrorMm: 2.5,
    files: { kind: 'jpeg', quality: 64, exifOrientation: 1 },
  };
}
