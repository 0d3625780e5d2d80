import { ordinalNumber } from '../foundation/ordinal.ts';

type Catalogue = Readonly<Record<string, string>>;

const onePlace = /^row (\d+), (\w+)(?: to (\w+))?(?:, step (\d+))?$/;

/**
 * Names of patches, told from one to another and parted by semicolons, in the language of a catalogue: places are counted by
 * figures there, since a word such as `second` means other things elsewhere. null: it is nothing of the kind.
 */
export function placesTold(english: string, catalogue: Catalogue): string | null {
  if (!/^row \d/.test(english)) return null;
  const [, list, more] = /^(.+?)(?: and (\d+) more)?$/s.exec(english)!;
  const told = list!.split('; ').map((name) => placeTold(name, catalogue));
  if (told.some((name) => name === null)) return null;
  const words = told.join('; ');
  const rest = more === undefined ? '{list}' : catalogue['{list} and {figureMore} more'];
  return rest?.replace('{list}', words).replace('{figureMore}', more ?? '') ?? null;
}

function placeTold(name: string, catalogue: Catalogue): string | null {
  const [, row, first, last, step] = onePlace.exec(name) ?? [];
  if (row === undefined) return null;
  const place = ordinalNumber(first!);
  const end = last === undefined ? null : ordinalNumber(last);
  const template =
    catalogue[
      `row {row}, {place}${last === undefined ? '' : ' to {last}'}${step === undefined ? '' : ', step {step}'}`
    ];
  if (place === null || (last !== undefined && end === null)) return null;
  return (
    template
      ?.replace('{row}', row)
      .replace('{place}', `${place}`)
      .replace('{last}', `${end}`)
      .replace('{step}', step ?? '') ?? null
  );
}
