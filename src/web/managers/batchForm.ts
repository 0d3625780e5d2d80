import type { Batch, BatchDraft, BatchEntry, BatchKind } from '../../records/batch.ts';
import { say } from '../words/say.ts';
import { numberText, numberTrouble, typedNumber } from './typedNumber.ts';

/** A batch of any kind as typed; what its kind does not have stays empty. */
export type BatchTyped = Readonly<
  Record<
    | 'name'
    | 'madeOn'
    | 'note'
    | 'smell'
    | 'baume'
    | 'pH'
    | 'gramsPerLitre'
    | 'gum'
    | 'product'
    | 'opened'
    | 'lot',
    string
  >
>;

export const batchFieldWords: Readonly<Record<keyof BatchTyped, string>> = {
  name: say('Name on the bottle'),
  madeOn: say('Made on'),
  note: say('Note'),
  smell: say('It smells'),
  baume: say('Strength'),
  pH: say('pH, measured'),
  gramsPerLitre: say('Tannic acid'),
  gum: say('Does it hold gum?'),
  product: say('Product'),
  opened: say('Opened on'),
  lot: say('Lot number'),
};

export const batchKindWords: Readonly<Record<BatchKind, string>> = {
  gum: say('gum arabic'),
  tannic: say('tannic solution'),
  washout: 'washout',
  base: 'base',
};

const nothing: BatchTyped = {
  name: '',
  madeOn: '',
  note: '',
  smell: '',
  baume: '',
  pH: '',
  gramsPerLitre: '',
  gum: '',
  product: '',
  opened: '',
  lot: '',
};

/** A batch as a person would type it; `today` (ISO day) for a new one. */
export function batchTyped(batch: Batch | null, today: string): BatchTyped {
  if (batch === null) return { ...nothing, madeOn: today };
  const common = { ...nothing, name: batch.name, madeOn: batch.madeOn ?? '', note: batch.note };
  switch (batch.kind) {
    case 'gum':
      return {
        ...common,
        smell: batch.smell ?? '',
        baume: numberText(batch.baume),
        pH: numberText(batch.pH),
      };
    case 'tannic':
      return {
        ...common,
        gramsPerLitre: numberText(batch.gramsPerLitre),
        pH: numberText(batch.pH),
        gum: batch.gum === null ? '' : batch.gum ? 'yes' : 'no',
      };
    case 'washout':
    case 'base':
      return { ...common, product: batch.product, opened: batch.opened ?? '', lot: batch.lot };
    default:
      return batch satisfies never;
  }
}

/** What is wrong with what was typed, by field; bounds are those of the server. */
export function batchTroubles(
  kind: BatchKind,
  typed: BatchTyped,
): Partial<Record<keyof BatchTyped, string | null>> {
  return {
    name: typed.name.trim() === '' ? say('A name is needed, such as gum, November.') : null,
    ...(kind === 'gum' && { baume: numberTrouble(typed.baume, 0, 40) }),
    ...((kind === 'gum' || kind === 'tannic') && { pH: numberTrouble(typed.pH, 0, 14) }),
    ...(kind === 'tannic' && { gramsPerLitre: numberTrouble(typed.gramsPerLitre, 0.001, 1000) }),
  };
}

/** What was typed, as the server takes it; only for what has no trouble. */
export function batchOfTyped(kind: BatchKind, typed: BatchTyped): BatchDraft {
  const day = (text: string) => (text === '' ? null : text);
  const common = { name: typed.name.trim(), note: typed.note };
  switch (kind) {
    case 'gum':
      return {
        ...common,
        kind,
        madeOn: day(typed.madeOn),
        smell: (typed.smell || null) as 'fresh' | 'sweet' | 'sour' | null,
        baume: typedNumber(typed.baume),
        pH: typedNumber(typed.pH),
      };
    case 'tannic':
      return {
        ...common,
        kind,
        madeOn: day(typed.madeOn),
        gramsPerLitre: typedNumber(typed.gramsPerLitre),
        pH: typedNumber(typed.pH),
        gum: typed.gum === '' ? null : typed.gum === 'yes',
      };
    case 'washout':
    case 'base':
      return {
        ...common,
        kind,
        madeOn: day(typed.madeOn),
        product: typed.product.trim(),
        opened: day(typed.opened),
        lot: typed.lot.trim(),
      };
    default:
      return kind satisfies never;
  }
}

/** What is known of a batch, in few words; what is not known is named where a plan would miss it. */
export function batchFacts(batch: BatchEntry): readonly string[] {
  const pH = (value: number | null) =>
    value === null ? say('pH not measured') : say('pH {value}', { value });
  switch (batch.kind) {
    case 'gum':
      return [
        batch.baume === null ? say('°Bé not measured') : say('{baume} °Bé', { baume: batch.baume }),
        pH(batch.pH),
        batch.smell === null ? say('smell not noted') : say('smells {smell}', { smell: batch.smell }),
      ];
    case 'tannic':
      return [
        batch.gramsPerLitre === null
          ? say('strength not stated')
          : say('{gramsPerLitre} g/l', { gramsPerLitre: batch.gramsPerLitre }),
        pH(batch.pH),
        batch.gum === null
          ? say('gum or not: not stated')
          : batch.gum
            ? say('holds gum')
            : say('without gum'),
      ];
    case 'washout':
    case 'base':
      return [
        batch.product || say('product not noted'),
        batch.lot && say('lot {lot}', { lot: batch.lot }),
      ].filter(Boolean);
    default:
      return batch satisfies never;
  }
}

/** What to mind about a batch, in sentences; common practice without source. */
export function batchCautions(batch: BatchEntry): readonly string[] {
  if (batch.kind === 'gum')
    return batch.smell === 'sour'
      ? [
          say(
            'Sour gum can let ink emulsify and the bare stone take a tint: make fresh gum (common practice, no source).',
          ),
        ]
      : [];
  if (batch.kind !== 'tannic') return [];
  const missing = [
    batch.gramsPerLitre === null && say('its strength'),
    batch.pH === null && say('its pH'),
    batch.gum === null && say('whether it holds gum'),
  ].filter((each) => each !== false);
  return [
    ...(missing.length > 0
      ? [
          say('A plan with this solution carries a caution until {missing} is written down.', {
            missing: missing.join(', '),
          }),
        ]
      : []),
    ...(batch.gum === false
      ? [
          say(
            'Without gum: fresh gum and a tight buff follow before the stone rests (common practice, no source).',
          ),
        ]
      : []),
  ];
}

/** How old a batch is, in words; a bought one counts from its opening. */
export function ageWords({ ageDays, kind, madeOn }: BatchEntry): string {
  if (ageDays === null) return say('age not known');
  const opened = (kind === 'washout' || kind === 'base') && madeOn === null;
  if (ageDays <= 0) return opened ? say('opened today') : say('made today');
  const days = say('{ageDays, plural, one {1 day} other {{ageDays} days}}', { ageDays });
  return opened ? say('open for {days}', { days }) : say('{days} old', { days });
}
