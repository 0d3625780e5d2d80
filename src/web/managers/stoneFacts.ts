import type { StoneDraft, StoneEntry } from '../../records/stoneEntry.ts';
import { say } from '../words/say.ts';
import { numberText, numberTrouble, typedNumber } from './typedNumber.ts';

/** What a stone is, as typed. Corners clockwise from the top left. */
export type StoneFacts = Readonly<
  Record<
    | 'name'
    | 'width'
    | 'height'
    | 'corner0'
    | 'corner1'
    | 'corner2'
    | 'corner3'
    | 'colour'
    | 'density'
    | 'note',
    string
  >
>;

export const stoneFactWords: Readonly<Record<keyof StoneFacts, string>> = {
  name: say('Name'),
  width: say('Width'),
  height: say('Height'),
  corner0: say('Thickness top left'),
  corner1: say('Thickness top right'),
  corner2: say('Thickness bottom right'),
  corner3: say('Thickness bottom left'),
  colour: say('Colour'),
  density: say('Density'),
  note: say('Note'),
};

/** What is known of a stone as a person would type it; all empty for a new one. */
export function stoneFactsOf(stone: StoneEntry | null): StoneFacts {
  const corner = (index: 0 | 1 | 2 | 3) => numberText(stone?.cornerThicknessMm[index] ?? null);
  return {
    name: stone?.name ?? '',
    width: numberText(stone?.widthMm ?? null),
    height: numberText(stone?.heightMm ?? null),
    corner0: corner(0),
    corner1: corner(1),
    corner2: corner(2),
    corner3: corner(3),
    colour: stone?.colour ?? '',
    density: numberText(stone?.densityGPerCm3 ?? null),
    note: stone?.note ?? '',
  };
}

/** What is wrong with what was typed, by field; the bounds are those of the server. */
export function stoneFactTroubles(facts: StoneFacts): Partial<Record<keyof StoneFacts, string | null>> {
  const corner = (text: string) => numberTrouble(text, 5, 500, { unit: 'mm' });
  return {
    name: facts.name.trim() === '' ? say('A name is needed, such as S-01.') : null,
    width: numberTrouble(facts.width, 20, 3000, { needed: true, unit: 'mm' }),
    height: numberTrouble(facts.height, 20, 3000, { needed: true, unit: 'mm' }),
    corner0: corner(facts.corner0),
    corner1: corner(facts.corner1),
    corner2: corner(facts.corner2),
    corner3: corner(facts.corner3),
    density: numberTrouble(facts.density, 1.5, 3.5),
  };
}

/** What was typed, as the server takes it; only for facts without troubles. */
export function stoneOfFacts(
  facts: StoneFacts,
): Pick<
  StoneDraft,
  'name' | 'widthMm' | 'heightMm' | 'cornerThicknessMm' | 'colour' | 'densityGPerCm3' | 'note'
> {
  return {
    name: facts.name.trim(),
    widthMm: typedNumber(facts.width)!,
    heightMm: typedNumber(facts.height)!,
    cornerThicknessMm: cornersTyped(facts),
    colour: facts.colour.trim(),
    densityGPerCm3: typedNumber(facts.density),
    note: facts.note,
  };
}

/** The four corners as typed so far; what is no number yet is left open. */
export function cornersTyped(facts: StoneFacts): StoneDraft['cornerThicknessMm'] {
  const corner = (text: string) => {
    const value = typedNumber(text);
    return Number.isNaN(value) ? null : value;
  };
  return [corner(facts.corner0), corner(facts.corner1), corner(facts.corner2), corner(facts.corner3)];
}
