import type { RoomQuestion } from '../../../records/roomQuestion.ts';
import type { LiftingDuration } from '../../../science/lifting/frequencyMultiplier.ts';
import type { Coupling } from '../../../science/lifting/liftingEquation.ts';
import { amount, maybe, number, of } from '../asking/askFields.ts';
import type { AskField, AskForm } from '../asking/askForm.ts';

export type RoomForm = AskForm<RoomQuestion>;

const airChanges: AskField = {
  name: 'ach',
  label: 'Air changes an hour',
  hint: 'What the fan really moves, measured. A closed room has less than one.',
  is: number(0.01, 1000),
};

const airForm: RoomForm = {
  kind: 'air',
  asks: 'How long until the air has cleared?',
  such: 'after the washout, six air changes an hour, 99 % gone',
  fields: [
    airChanges,
    { name: 'removal', label: 'How much is to be gone', unit: '%', is: number(1, 99.999) },
  ],
  start: { fields: { ach: '', removal: '99' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'air',
    airChangesPerHour: of(fields, 'ach'),
    removal: of(fields, 'removal') / 100,
  }),
};

/** Densities of a grain, g/cm³, from memory: rosin 1.07, talc 2.7. */
const powders = { rosin: 1.07, talc: 2.7 };

const settleForm: RoomForm = {
  kind: 'settle',
  asks: 'How long may dust hang?',
  such: 'rosin or talc of 5 µm, from 2 m',
  fields: [
    {
      name: 'powder',
      label: 'Of what',
      hint: 'Densities from memory: rosin 1.07, talc 2.7 g/cm³.',
      is: {
        kind: 'choice',
        options: [
          ['rosin', 'rosin'],
          ['talc', 'talc'],
        ],
      },
    },
    {
      name: 'micron',
      label: 'Grain',
      unit: 'µm',
      hint: 'What can be seen in a beam of light is coarser than what is breathed in: try 1, 5 and 20.',
      is: number(0.2, 1000),
    },
    { name: 'metres', label: 'Falls', unit: 'm', is: number(0.01, 100) },
  ],
  start: { fields: { powder: 'rosin', micron: '5', metres: '2' }, lines: [] },
  question: ({ fields }) => ({
    kind: 'settle',
    micron: of(fields, 'micron'),
    gramsPerCm3: fields.powder === 'talc' ? powders.talc : powders.rosin,
    metres: of(fields, 'metres'),
  }),
};

const vapourForm: RoomForm = {
  kind: 'vapour',
  asks: 'How much vapour can a washout give?',
  such: '30 ml in a room of 50 m³, against the limit on the safety data sheet',
  fields: [
    { name: 'ml', label: 'Poured', unit: 'ml', is: amount },
    {
      name: 'limit',
      label: 'Limit',
      unit: 'mg/m³',
      hint: 'From the safety data sheet, section 8.',
      is: number(0.001, 100_000),
    },
    { name: 'roomM3', label: 'Room', unit: 'm³', hint: 'Length × width × height.', is: amount },
    airChanges,
    {
      name: 'gramsPerMl',
      label: 'Density',
      unit: 'g/ml',
      hint: 'Section 9 of the sheet. Left out: 0.8, from memory.',
      is: number(0.3, 3),
      optional: true,
    },
    {
      name: 'flash',
      label: 'Flash point',
      unit: '°C',
      hint: 'Section 9 of the sheet.',
      is: number(-100, 400),
      optional: true,
    },
    {
      name: 'air',
      label: 'Air over the stone',
      unit: '°C',
      hint: 'Of a warm fan too, if there is one.',
      is: number(-30, 120),
      optional: true,
    },
  ],
  start: {
    fields: { ml: '', limit: '', roomM3: '', ach: '', gramsPerMl: '', flash: '', air: '' },
    lines: [],
  },
  question: ({ fields }) => ({
    kind: 'vapour',
    ml: of(fields, 'ml'),
    gramsPerMl: maybe(fields, 'gramsPerMl'),
    roomM3: of(fields, 'roomM3'),
    airChangesPerHour: of(fields, 'ach'),
    limitMgPerM3: of(fields, 'limit'),
    flashPointC: maybe(fields, 'flash'),
    airC: maybe(fields, 'air'),
  }),
};

const millimetres = number(1, 3000);

const liftForm: RoomForm = {
  kind: 'lift',
  asks: 'May one person lift this stone?',
  such: '400 × 300 × 70 mm from the floor rack to the press',
  fields: [
    { name: 'width', label: 'Stone, wide', unit: 'mm', is: millimetres },
    { name: 'height', label: 'High', unit: 'mm', is: millimetres },
    { name: 'thickness', label: 'Thick', unit: 'mm', is: millimetres },
    {
      name: 'reach',
      label: 'Hands from the ankles',
      unit: 'cm',
      hint: 'Level distance, ankles to the middle of the grip.',
      is: number(0, 300),
    },
    { name: 'from', label: 'Hands above the floor at the start', unit: 'cm', is: number(0, 300) },
    { name: 'way', label: 'Then up or down by', unit: 'cm', is: number(0, 300) },
    { name: 'twist', label: 'Twist of the body', unit: '°', is: number(0, 180) },
    {
      name: 'perMinute',
      label: 'Lifts a minute',
      hint: 'One in five minutes or fewer: 0.2.',
      is: number(0, 60),
    },
    {
      name: 'duration',
      label: 'For how long',
      is: {
        kind: 'choice',
        options: [
          ['1h', 'up to an hour'],
          ['2h', 'up to two hours'],
          ['8h', 'up to eight hours'],
        ],
      },
    },
    {
      name: 'grip',
      label: 'Grip',
      hint: 'A bare stone has no handles: poor, or fair with rounded edges.',
      is: {
        kind: 'choice',
        options: [
          ['poor', 'poor'],
          ['fair', 'fair'],
          ['good', 'good'],
        ],
      },
    },
  ],
  start: {
    fields: {
      width: '',
      height: '',
      thickness: '',
      reach: '40',
      from: '75',
      way: '25',
      twist: '0',
      perMinute: '0.2',
      duration: '1h',
      grip: 'poor',
    },
    lines: [],
  },
  question: ({ fields }) => ({
    kind: 'lift',
    loadKg: null,
    stone: {
      widthMm: of(fields, 'width'),
      heightMm: of(fields, 'height'),
      thicknessMm: of(fields, 'thickness'),
      densityGPerCm3: null,
    },
    horizontalCm: of(fields, 'reach'),
    loadDepthCm: null,
    verticalCm: of(fields, 'from'),
    distanceCm: of(fields, 'way'),
    asymmetryDegrees: of(fields, 'twist'),
    liftsPerMinute: of(fields, 'perMinute'),
    duration: fields.duration as LiftingDuration,
    coupling: fields.grip as Coupling,
  }),
};

/** The questions about the room and about hands, each as a page. */
export const roomForms: readonly RoomForm[] = [settleForm, vapourForm, airForm, liftForm];
