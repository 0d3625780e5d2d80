import type { Ink, InkDraft, InkEntry, InkVerdict } from '../../records/ink.ts';
import type { InkAnswer } from '../../records/inkAnswer.ts';
import { inkGrams, modifierPercent } from '../../studio/ink/inkMix.ts';
import { numberText, numberTrouble, typedNumber } from './typedNumber.ts';

/** A mix of ink as typed; the string log has a form of its own. */
export type InkTyped = Readonly<Record<Exclude<keyof InkDraft, 'strings'>, string>>;

export const inkFieldWords: Readonly<Record<keyof InkTyped, string>> = {
  name: 'Name of the mix',
  workId: 'Made for',
  madeOn: 'Made on',
  softInk: 'Soft ink',
  stiffInk: 'Stiff ink',
  softParts: 'Soft',
  stiffParts: 'Stiff',
  inkGrams: 'Both inks together',
  modifier: 'Modifier',
  modifierPercent: 'How much of it, on the ink',
  verdict: 'What did the prints say?',
  verdictWords: 'In words',
  note: 'Note',
};

export const inkVerdictWords: Readonly<Record<InkVerdict, string>> = {
  good: 'printed well',
  'too soft': 'too soft',
  'too stiff': 'too stiff',
  other: 'something else',
};

/** A mix as a person would type it; a new one is made today and for the work given, if any. */
export function inkTyped(ink: Ink | null, today: string, workId = ''): InkTyped {
  return {
    name: ink?.name ?? '',
    workId: ink === null ? workId : (ink.workId ?? ''),
    madeOn: ink === null ? today : (ink.madeOn ?? ''),
    softInk: ink?.softInk ?? '',
    stiffInk: ink?.stiffInk ?? '',
    softParts: numberText(ink?.softParts ?? null),
    stiffParts: numberText(ink?.stiffParts ?? null),
    inkGrams: numberText(ink?.inkGrams ?? null),
    modifier: ink?.modifier ?? '',
    modifierPercent: numberText(ink?.modifierPercent ?? null),
    verdict: ink?.verdict ?? '',
    verdictWords: ink?.verdictWords ?? '',
    note: ink?.note ?? '',
  };
}

/** What is wrong with what was typed, by field; bounds are those of the server. */
export function inkTroubles(typed: InkTyped): Partial<Record<keyof InkTyped, string | null>> {
  const nothing = typedNumber(typed.softParts) === 0 && typedNumber(typed.stiffParts) === 0;
  return {
    name: typed.name.trim() === '' ? 'A name is needed, such as mudbank black.' : null,
    softParts: nothing ? 'One of the parts is above 0.' : numberTrouble(typed.softParts, 0, 1000),
    stiffParts: numberTrouble(typed.stiffParts, 0, 1000),
    inkGrams: numberTrouble(typed.inkGrams, 0.1, 100_000),
    modifierPercent: numberTrouble(typed.modifierPercent, 0, 100),
  };
}

/** What was typed, as the server takes it; only for what has no trouble. */
export function inkOfTyped(typed: InkTyped): Omit<InkDraft, 'strings'> {
  const words = (text: string) => text.trim();
  return {
    name: words(typed.name),
    workId: typed.workId || null,
    madeOn: typed.madeOn || null,
    softInk: words(typed.softInk),
    stiffInk: words(typed.stiffInk),
    softParts: typedNumber(typed.softParts),
    stiffParts: typedNumber(typed.stiffParts),
    inkGrams: typedNumber(typed.inkGrams),
    modifier: words(typed.modifier),
    modifierPercent: typedNumber(typed.modifierPercent),
    verdict: (typed.verdict || null) as InkVerdict | null,
    verdictWords: words(typed.verdictWords),
    note: typed.note,
  };
}

/** What to weigh for what is typed, in a sentence; null while that can't be told. */
export function weighingWords(typed: InkTyped): string | null {
  if (Object.values({ ...inkTroubles(typed), name: null }).some((each) => each !== null)) return null;
  const { softParts, stiffParts, inkGrams: whole, modifierPercent: percent } = inkOfTyped(typed);
  if (softParts === null || stiffParts === null || whole === null) return null;
  const { softGrams, stiffGrams } = inkGrams((100 * softParts) / (softParts + stiffParts), whole);
  const inks = `${gramsText(softGrams)} soft, ${gramsText(stiffGrams)} stiff`;
  if (percent === null || percent === 0) return `Weigh ${inks}.`;
  const ofWhole = modifierPercent(percent, 100).ofWhole.toFixed(1);
  const same = ofWhole === percent.toFixed(1);
  const share = same ? `${percent} % of it` : `${percent} % on the ink, which is ${ofWhole} % of the whole`;
  const more = gramsText((whole * percent) / 100);
  return `Weigh ${inks}, then ${more} of the modifier: ${share}.`;
}

/** What is known of a mix, in few words. */
export function inkFacts({
  softPercent,
  modifier,
  modifierPercent: percent,
  strings,
}: InkEntry): readonly string[] {
  const last = strings.at(-1);
  return [
    softPercent === null ? 'parts not stated' : `${partsText(softPercent)} soft to stiff`,
    percent === null
      ? modifier
        ? `${modifier}, how much not stated`
        : ''
      : `${percent} % ${modifier || 'modifier'}`,
    last === undefined ? 'string not tried' : `string ${last.cm} cm`,
  ].filter(Boolean);
}

/** A share as two parts of a hundred, such as 70:30. */
export function partsText(softPercent: number): string {
  return `${Math.round(softPercent)}:${100 - Math.round(softPercent)}`;
}

/** Grams as a range with its unit; whole grams, as the film and the charge are from memory. */
export function gramsRange({ low, high }: { readonly low: number; readonly high: number }): string {
  return `${Math.round(low)} to ${Math.round(high)} g`;
}

/** What the fields take over from a recommendation: the parts, and the grams in the middle of the range. */
export function typedOfAnswer({ parts, mix }: InkAnswer): Partial<InkTyped> {
  if (parts === null) return {};
  const inkOf = ({ softGrams, stiffGrams }: { readonly softGrams: number; readonly stiffGrams: number }) =>
    softGrams + stiffGrams;
  const grams = mix === null ? null : Math.round((inkOf(mix.low) + inkOf(mix.high)) / 2);
  return {
    softParts: String(parts.soft),
    stiffParts: String(parts.stiff),
    ...(grams !== null && { inkGrams: String(grams) }),
  };
}

/** What the fields take over from an earlier mix; how much of it there was is of that day. */
export function typedOfInk(ink: Ink): Partial<InkTyped> {
  const { softInk, stiffInk, softParts, stiffParts, modifier, modifierPercent: percent } = inkTyped(ink, '');
  return { softInk, stiffInk, softParts, stiffParts, modifier, modifierPercent: percent };
}

function gramsText(grams: number): string {
  return `${grams.toFixed(1).replace(/\.0$/, '')} g`;
}
