import type { RoomQuestion } from '../../../records/roomQuestion.ts';
import type { LiftingDuration } from '../../../science/lifting/frequencyMultiplier.ts';
import type { Coupling } from '../../../science/lifting/liftingEquation.ts';
import { lengthFigure, sizeWords } from '../../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { amount, maybe, number, of } from '../asking/askFields.ts';
import type { AskField, AskForm } from '../asking/askForm.ts';

export type RoomForm = AskForm<RoomQuestion>;

const airChanges: AskField = {
  name: 'ach',
  label: say('Air changes an hour'),
  hint: say('What the fan really moves, measured. A closed room has less than one.'),
  is: number(0.01, 1000),
};

const airForm: RoomForm = {
  kind: 'air',
  asks: say('How long until the air has cleared?'),
  such: say('after the washout, six air changes an hour, 99 % gone'),
  fields: [
    airChanges,
    { name: 'removal', label: say('How much is to be gone'), unit: '%', is: number(1, 99.999) },
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
  asks: say('How long may dust hang?'),
  such: say('rosin or talc of 5 µm, from 2 m'),
  fields: [
    {
      name: 'powder',
      label: say('Of what'),
      hint: say('Densities from memory: rosin 1.07, talc 2.7 g/cm³.'),
      is: {
        kind: 'choice',
        options: [
          ['rosin', say('rosin')],
          ['talc', say('talc')],
        ],
      },
    },
    {
      name: 'micron',
      label: say('Grain'),
      unit: 'µm',
      hint: say('What can be seen in a beam of light is coarser than what is breathed in: try 1, 5 and 20.'),
      is: number(0.2, 1000),
    },
    { name: 'metres', label: say('Falls'), unit: 'm', is: number(0.01, 100) },
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
  asks: say('How much vapour can a washout give?'),
  such: say('30 ml in a room of 50 m³, against the limit on the safety data sheet'),
  fields: [
    { name: 'ml', label: say('Poured'), unit: 'ml', is: amount },
    {
      name: 'limit',
      label: say('Limit'),
      unit: 'mg/m³',
      hint: say('From the safety data sheet, section 8.'),
      is: number(0.001, 100_000),
    },
    { name: 'roomM3', label: say('Room'), unit: 'm³', hint: say('Length × width × height.'), is: amount },
    airChanges,
    {
      name: 'gramsPerMl',
      label: say('Density'),
      unit: 'g/ml',
      hint: say('Section 9 of the sheet. Left out: 0.8, from memory.'),
      is: number(0.3, 3),
      optional: true,
    },
    {
      name: 'flash',
      label: say('Flash point'),
      unit: '°C',
      hint: say('Section 9 of the sheet.'),
      is: number(-100, 400),
      optional: true,
    },
    {
      name: 'air',
      label: say('Air over the stone'),
      unit: '°C',
      hint: say('Of a warm fan too, if there is one.'),
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
  asks: say('May one person lift this stone?'),
  such: say('{size} from the floor rack to the press', {
    size: `${lengthFigure(400)} × ${sizeWords(300, 70)}`,
  }),
  fields: [
    { name: 'width', label: say('Stone, wide'), unit: 'mm', is: millimetres },
    { name: 'height', label: say('High'), unit: 'mm', is: millimetres },
    { name: 'thickness', label: say('Thick'), unit: 'mm', is: millimetres },
    {
      name: 'reach',
      label: say('Hands from the ankles'),
      unit: 'cm',
      hint: say('Level distance, ankles to the middle of the grip.'),
      is: number(0, 300),
    },
    { name: 'from', label: say('Hands above the floor at the start'), unit: 'cm', is: number(0, 300) },
    { name: 'way', label: say('Then up or down by'), unit: 'cm', is: number(0, 300) },
    { name: 'twist', label: say('Twist of the body'), unit: '°', is: number(0, 180) },
    {
      name: 'perMinute',
      label: say('Lifts a minute'),
      hint: say('One in five minutes or fewer: 0.2.'),
      is: number(0, 60),
    },
    {
      name: 'duration',
      label: say('For how long'),
      is: {
        kind: 'choice',
        options: [
          ['1h', say('up to an hour')],
          ['2h', say('up to two hours')],
          ['8h', say('up to eight hours')],
        ],
      },
    },
    {
      name: 'grip',
      label: say('Grip'),
      hint: say('A bare stone has no handles: poor, or fair with rounded edges.'),
      is: {
        kind: 'choice',
        options: [
          ['poor', say('poor')],
          ['fair', say('fair')],
          ['good', say('good')],
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
