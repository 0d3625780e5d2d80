import type { PullDraft } from '../../records/pull.ts';
import type { ToneArea } from '../../records/workSeries.ts';
import type { Fault } from '../render/faults/fault.ts';
import type { PairCase } from '../render/pairCase.ts';
import { faithfulTransfer, type ToneTransfer } from '../render/printing.ts';
import { lowWaterCase } from './lowWaterCase.ts';

/** One pull of "Low Water" as it was made: what is written about it, and how its photographs are rendered. */
export interface LowWaterPull {
  readonly id: string;
  /** Its photographs are named `pull-N.jpg` and, set up afresh, `pull-N-again.jpg`. */
  readonly draft: Omit<PullDraft, 'photographs'>;
  readonly printed: {
    readonly transfer: ToneTransfer;
    /** Linear reflectance of a full film as a factor of the usual. */
    readonly film: number;
    readonly faults?: readonly Fault[];
    readonly again?: true;
  } | null;
}

/** Minutes after the pull at which each photograph was taken. */
export const photographedAfterMinutes = 10;

const tidesPaper = { id: 'saltreach-paper-tides', words: 'Paper of the Twelve Tides' };
const newsprint = { id: 'saltreach-paper-newsprint', words: 'Newsprint' };
const firstBlack = { id: 'saltreach-mix-first', words: 'Low Water, first black' };
const secondBlack = { id: 'saltreach-mix-second', words: 'Low Water, second black' };
const heron = { id: 'saltreach-roller-heron', words: 'Heron' };

function pull(
  number: number,
  madeAt: string,
  more: Partial<LowWaterPull['draft']>,
  printed: LowWaterPull['printed'],
): LowWaterPull {
  const draft: LowWaterPull['draft'] = {
    number,
    kind: 'trial-proof',
    paper: tidesPaper,
    damp: true,
    madeAt,
    ink: firstBlack,
    charges: 2,
    passes: 8,
    pressureEighths: 6,
    packing: 'two blotters, newsprint, greased tympan',
    roller: heron,
    who: 'P.R.',
    eye: null,
    faults: [],
    remarks: '',
    ...more,
  };
  return { id: `saltreach-low-water-pull-${number}`, draft, printed };
}

function tones(
  lights: readonly [number, number],
  darks: readonly [number, number],
  gain: number,
): ToneTransfer {
  return { ...faithfulTransfer, lightsLost: lights, darksClosed: darks, gain, full: 0.988 };
}

/** Two days of proofs: the soft ink closes the darks, the stiffer one opens them, and the last pulls settle. Invented. */
export const lowWaterPulls: readonly LowWaterPull[] = [
  pull(
    1,
    '2025-11-24T10:50:00+00:00',
    {
      paper: newsprint,
      damp: false,
      eye: { lights: 0.1, middles: 0.3, darks: 0.7, ageMinutes: 5, who: 'P.R.' },
      remarks: 'To take the first ink off; read by eye from the hatch scale.',
    },
    null,
  ),
  pull(
    2,
    '2025-11-24T11:05:00+00:00',
    { charges: 3 },
    {
      transfer: tones([0.04, 0.15], [0.8, 0.97], 0.0),
      film: 1.5,
    },
  ),
  pull(
    3,
    '2025-11-24T11:25:00+00:00',
    {
      charges: 3,
      faults: [
        {
          words: 'Reeds and post close',
          closed: { at: '2025-11-25T10:40:00+00:00', words: 'Open with the stiffer ink.' },
        },
      ],
    },
    { transfer: tones([0.05, 0.17], [0.6, 0.84], 0.09), film: 1 },
  ),
  pull(
    4,
    '2025-11-25T10:15:00+00:00',
    { ink: secondBlack, kind: 'proof' },
    {
      transfer: tones([0.03, 0.13], [0.78, 0.95], 0.06),
      film: 1.1,
      again: true,
    },
  ),
  pull(
    5,
    '2025-11-25T10:35:00+00:00',
    { ink: secondBlack, kind: 'proof' },
    {
      transfer: tones([0.02, 0.12], [0.8, 0.96], 0.05),
      film: 1.05,
    },
  ),
  pull(
    6,
    '2025-11-25T10:55:00+00:00',
    { ink: secondBlack, kind: 'for-approval', pressureEighths: 7 },
    {
      transfer: tones([0.02, 0.12], [0.8, 0.96], 0.055),
      film: 1.03,
    },
  ),
  pull(
    7,
    '2025-11-25T11:15:00+00:00',
    { ink: secondBlack, kind: 'for-approval', pressureEighths: 7 },
    {
      transfer: tones([0.02, 0.12], [0.8, 0.965], 0.05),
      film: 1.04,
    },
  ),
];

/** Where the tones are read, mm from the stone's top left: the light foot of the sky, the mudbank, the post. */
export const lowWaterAreas: Readonly<Record<'lights' | 'middles' | 'darks', ToneArea>> = {
  lights: { origin: 'chosen', zones: [], polygonsMm: [box(60, 118, 330, 16)] },
  middles: { origin: 'chosen', zones: [], polygonsMm: [box(75, 190, 210, 30)] },
  darks: { origin: 'chosen', zones: [], polygonsMm: [box(75, 226, 240, 28)] },
};

function box(x: number, y: number, width: number, height: number): ToneArea['polygonsMm'][number] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/** How the photographs of a pull are rendered: small, of the same stone as the demo pair. */
export function pullCase({ draft, printed }: LowWaterPull): PairCase {
  const base = lowWaterCase();
  const { number } = draft;
  return {
    ...base,
    name: `low-water-pull-${number}`,
    megapixels: 1.3,
    repeats: true,
    transfer: printed!.transfer,
    damage: { ...base.damage, patches: base.damage.patches.filter(({ kind }) => kind === 'lost') },
    faults: printed!.faults ?? [],
    inkReflectance: { stone: 1, print: printed!.film },
    stretch: { ...base.stretch, seed: base.stretch.seed + number },
    print: {
      ...base.print,
      rollDegrees: base.print.rollDegrees + ((number * 37) % 5) - 2,
      tiltXDegrees: base.print.tiltXDegrees + ((number * 17) % 3) - 1,
    },
    files: { kind: 'jpeg', quality: 66, exifOrientation: 1 },
  };
}
