import type { Basis } from '../../foundation/measured.ts';
import type { EtchRecipe, EtchRow } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import { minutesSeconds } from '../../studio/etch/clockWords.ts';
import { say } from '../words/say.ts';
import { numberText, numberTrouble, typedNumber } from './typedNumber.ts';
import { typedSeconds } from './typedSeconds.ts';

/** A rule of an etch table as typed. */
export interface EtchRowTyped {
  readonly strength: EtchStrength;
  readonly name: string;
  readonly recipe: 'parts' | 'drops';
  readonly parts: readonly { readonly material: string; readonly parts: string }[];
  readonly acid: string;
  readonly into: string;
  readonly dropsLow: string;
  readonly dropsHigh: string;
  readonly low: string;
  readonly wanted: string;
  readonly high: string;
  readonly moveWithin: string;
  readonly basis: Basis;
  readonly note: string;
  readonly advice: readonly { readonly source: string; readonly advice: string }[];
  readonly choice: string;
}

const clock = (seconds: number | null) => (seconds === null ? '' : minutesSeconds(seconds));

/** A rule as a person would type it. */
export function etchRowTyped(row: EtchRow): EtchRowTyped {
  const { strength, name, recipe, contactSeconds, moveWithinSeconds, basis, advice, choice } = row;
  const drops = recipe.kind === 'drops' ? recipe : null;
  return {
    strength,
    name,
    recipe: recipe.kind,
    parts:
      recipe.kind === 'parts'
        ? recipe.parts.map(({ material, parts }) => ({ material, parts: numberText(parts) }))
        : [{ material: '', parts: '' }],
    acid: drops?.acid ?? '',
    into: drops?.into ?? '',
    dropsLow: numberText(drops?.dropsPer30Ml.low ?? null),
    dropsHigh: numberText(drops?.dropsPer30Ml.high ?? null),
    low: clock(contactSeconds.low),
    wanted: clock(contactSeconds.wanted),
    high: clock(contactSeconds.high),
    moveWithin: clock(moveWithinSeconds),
    basis: basis.basis,
    note: basis.note,
    advice: advice ?? [],
    choice: choice ?? '',
  };
}

/** A rule with nothing decided yet. */
export function emptyEtchRow(strength: EtchStrength): EtchRowTyped {
  return {
    strength,
    name: '',
    recipe: 'parts',
    parts: [{ material: 'gum', parts: '1' }],
    acid: '',
    into: 'gum',
    dropsLow: '',
    dropsHigh: '',
    low: '',
    wanted: '',
    high: '',
    moveWithin: '',
    basis: 'this room',
    note: '',
    advice: [],
    choice: '',
  };
}

/** What is wrong with a rule as typed, by field (`parts.0.parts` for a part); empty where nothing is. */
export function etchRowTroubles(row: EtchRowTyped): Readonly<Record<string, string>> {
  const found: Record<string, string | null> = {
    name: row.name.trim() === '' ? say('The etch needs a name, such as gum alone.') : null,
    note: row.note.trim() === '' ? say('Say where it comes from, even if from memory.') : null,
    ...(row.recipe === 'parts' ? partTroubles(row) : dropTroubles(row)),
    ...timeTroubles(row),
  };
  row.advice.forEach(({ source, advice }, index) => {
    if ((source.trim() === '') !== (advice.trim() === ''))
      found[`advice.${index}`] = say('Both the source and what it says are needed.');
  });
  return Object.fromEntries(
    Object.entries(found).filter((entry): entry is [string, string] => entry[1] !== null),
  );
}

function partTroubles({ parts }: EtchRowTyped): Record<string, string | null> {
  return Object.fromEntries(
    parts.flatMap(({ material, parts: text }, index) => [
      [`parts.${index}.material`, material.trim() === '' ? say('What is it?') : null],
      [`parts.${index}.parts`, numberTrouble(text, 0.01, 1000, { needed: true })],
    ]),
  );
}

function dropTroubles({ acid, into, dropsLow, dropsHigh }: EtchRowTyped): Record<string, string | null> {
  const fewer = typedNumber(dropsHigh)! < typedNumber(dropsLow)!;
  return {
    acid: acid.trim() === '' ? say('Which acid, and how strong?') : null,
    into: into.trim() === '' ? say('Into what?') : null,
    dropsLow: numberTrouble(dropsLow, 0, 600, { needed: true }),
    dropsHigh:
      numberTrouble(dropsHigh, 0, 600, { needed: true }) ?? (fewer ? say('Fewer than the least.') : null),
  };
}

function timeTroubles(row: EtchRowTyped): Record<string, string | null> {
  const [low, wanted, high, moveWithin] = [row.low, row.wanted, row.high, row.moveWithin].map(typedSeconds);
  const noTime = (value: number | null | undefined) => Number.isNaN(value) || (value ?? 0) > 86_400;
  const write = say('Write it as 1:30, or as seconds.');
  return {
    low: low === null ? say('The least is needed, such as 1:30.') : noTime(low) ? write : null,
    wanted: noTime(wanted)
      ? write
      : wanted !== null && (wanted! < low! || (high !== null && wanted! > high!))
        ? say('It lies outside least and most.')
        : null,
    high: noTime(high)
      ? write
      : high !== null && high! < low!
        ? say('The most is less than the least.')
        : null,
    moveWithin: !moveWithin || noTime(moveWithin) ? say('A time is needed, such as 0:45.') : null,
  };
}

/** The rule that was typed; only for one without troubles. */
export function etchRowOf(row: EtchRowTyped): EtchRow {
  const advice = row.advice.filter(({ source }) => source.trim() !== '');
  const recipe: EtchRecipe =
    row.recipe === 'parts'
      ? {
          kind: 'parts',
          parts: row.parts.map(({ material, parts }) => ({
            material: material.trim(),
            parts: typedNumber(parts)!,
          })),
        }
      : {
          kind: 'drops',
          acid: row.acid.trim(),
          into: row.into.trim(),
          dropsPer30Ml: { low: typedNumber(row.dropsLow)!, high: typedNumber(row.dropsHigh)! },
        };
  return {
    strength: row.strength,
    name: row.name.trim(),
    recipe,
    contactSeconds: {
      low: typedSeconds(row.low)!,
      wanted: typedSeconds(row.wanted),
      high: typedSeconds(row.high),
    },
    moveWithinSeconds: typedSeconds(row.moveWithin)!,
    basis: { basis: row.basis, note: row.note.trim() },
    ...(advice.length > 0 && { advice }),
    ...(row.choice.trim() !== '' && { choice: row.choice.trim() }),
  };
}

/**
 * The rules to go on with where somebody saved a table meanwhile: those that were typed in stay as typed, all others
 * are as kept now. A rule that was taken out here stays out.
 */
export function mergedRules(
  opened: readonly EtchRow[],
  typed: readonly EtchRowTyped[],
  kept: readonly EtchRow[],
): readonly EtchRowTyped[] {
  const of = <Rule extends { readonly strength: EtchStrength }>(rules: readonly Rule[], rule: Rule) =>
    rules.find(({ strength }) => strength === rule.strength);
  const before = opened.map(etchRowTyped);
  const same = (a: EtchRowTyped, b: EtchRowTyped | undefined) => JSON.stringify(a) === JSON.stringify(b);
  const mine = typed.filter((rule) => !same(rule, of(before, rule)));
  const theirs = kept
    .map(etchRowTyped)
    .filter((rule) => !of(mine, rule) && (of(typed, rule) !== undefined || of(before, rule) === undefined));
  return [...mine, ...theirs];
}
