import type { Ink, InkDraft, InkEntry, InkVerdict } from '../../records/ink.ts';
import type { InkAnswer } from '../../records/inkAnswer.ts';
import { inkGrams, modifierPercent } from '../../studio/ink/inkMix.ts';
import { figuresInWords } from '../../words/figuresInWords.ts';
import { say } from '../words/say.ts';
import { numberText, numberTrouble, typedNumber } from './typedNumber.ts';

/** A mix of ink as typed; the string log has a form of its own. */
export type InkTyped = Readonly<Record<Exclude<keyof InkDraft, 'strings'>, string>>;

export const inkFieldWords: Readonly<Record<keyof InkTyped, string>> = {
  name: say('Name of the mix'),
  workId: say('Made for'),
  madeOn: say('Made on'),
  softInk: say('Soft ink'),
  stiffInk: say('Stiff ink'),
  softParts: say('Soft'),
  stiffParts: say('Stiff'),
  inkGrams: say('Both inks together'),
  modifier: say('Modifier'),
  modifierPercent: say('How much of it, on the ink'),
  verdict: say('What did the prints say?'),
  verdictWords: say('In words'),
  note: say('Note'),
};

export const inkVerdictWords: Readonly<Record<InkVerdict, string>> = {
  good: say('printed well'),
  'too soft': say('too soft'),
  'too stiff': say('too stiff'),
  other: say('something else'),
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
    name: typed.name.trim() === '' ? say('A name is needed, such as mudbank black.') : null,
    softParts: nothing ? say('One of the parts is above 0.') : numberTrouble(typed.softParts, 0, 1000),
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
  const inks = say('{grams} soft, {grams2} stiff', {
    grams: gramsText(softGrams),
    grams2: gramsText(stiffGrams),
  });
  if (percent === null || percent === 0) return say('Weigh {inks}.', { inks });
  const ofWhole = modifierPercent(percent, 100).ofWhole.toFixed(1);
  const same = ofWhole === percent.toFixed(1);
  const share = same
    ? say('{percent} % of it', { percent })
    : say('{percent} % on the ink, which is {ofWhole} % of the whole', { percent, ofWhole });
  const more = gramsText((whole * percent) / 100);
  return say('Weigh {inks}, then {more} of the modifier: {share}.', { inks, more, share });
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
    softPercent === null
      ? say('parts not stated')
      : say('{parts} soft to stiff', { parts: partsText(softPercent) }),
    percent === null
      ? modifier
        ? say('{modifier}, how much not stated', { modifier })
        : ''
      : `${percent} % ${modifier || say('modifier')}`,
    last === undefined
      ? say('string not tried')
      : say('string {length}', { length: figuresInWords(`${last.cm} cm`) }),
  ].filter(Boolean);
}

/** A share as two parts of a hundred, such as 70:30. */
export function partsText(softPercent: number): string {
  return `${Math.round(softPercent)}:${100 - Math.round(softPercent)}`;
}

/** Grams as a range with its unit; whole grams, as the film and the charge are from memory. */
export function gramsRange({ low, high }: { readonly low: number; readonly high: number }): string {
  return say('{low} to {high} g', { low: Math.round(low), high: Math.round(high) });
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
  return say('{grams} g', { grams: grams.toFixed(1).replace(/\.0$/, '') });
}
