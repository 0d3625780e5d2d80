import type { EtchRow, EtchTable } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type { OwnEtch } from '../../records/testPlan.ts';
import { secondsOfWords } from './secondsOfWords.ts';

/** Materials that etches are mixed of, beside those that a table's own rows name. */
const materialsKnown = ['gum', 'water', 'tannic solution'] as const;
const nothing = /^(none|nothing|no etch|without|bare|unetched)$/;
/** The row that speaks for a name which several rows bear: that of drawn work before that of the ground. */
const drawnFirst: readonly EtchStrength[] = ['light', 'middle', 'dark', 'scant', 'ground'];
/** A test's own time of contact is kept to a tenth. Our rule, no source. */
const timeShare = 0.1;

/** What the words of a test's etch stand for: a row to etch by, nothing laid, or null where nobody here knows it. */
export type LevelEtch = { readonly row: EtchRow | null; readonly takenFor: string } | null;

/**
 * Finds the etch that a level's words stand for: `none`, a row's name, one material alone, a mixture such as "gum and tannic
 * 1:2", drops such as "6 drops", or one of the test's own; each may end in a time, such as "gum alone 300 s".
 * @param own etches that are in no table.
 */
export function etchOfLevel(level: string, table: EtchTable, own: readonly OwnEtch[] = []): LevelEtch {
  const stated = own.find((etch) => etch.level === level);
  if (stated) return ownEtch(stated, table);
  const { words, seconds } = withoutTime(level.trim().toLowerCase());
  if (nothing.test(words)) return { row: null, takenFor: 'nothing laid' };
  const row = namedRow(words, table) ?? droppedRow(words, table) ?? mixedRow(words, table);
  if (!row) return null;
  return { row: seconds === null ? row : rowLying(row, seconds), takenFor: row.name };
}

/** A row whose etch lies as long as a test wants it, kept to a tenth. */
export function rowLying(row: EtchRow, seconds: number): EtchRow {
  return {
    ...row,
    contactSeconds: {
      low: Math.floor(seconds * (1 - timeShare)),
      wanted: seconds,
      high: Math.ceil(seconds * (1 + timeShare)),
    },
  };
}

/** Names that an etch of a test may go by here, for whoever looks for the nearest. */
export function etchNames(table: EtchTable): string[] {
  const mixed = ['gum and tannic 1:1', 'gum and tannic 1:2', 'gum and tannic 2:1', 'tannic'];
  const tannic = table.rows.some(({ recipe }) => JSON.stringify(recipe).includes('tannic'));
  return [...new Set(['None', ...table.rows.map(({ name }) => name), ...(tannic ? mixed : [])])];
}

function ownEtch({ level, parts, strength, contactSeconds }: OwnEtch, table: EtchTable): LevelEtch {
  const like = table.rows.find((row) => row.strength === strength);
  const row: EtchRow = {
    strength,
    name: level,
    recipe: { kind: 'parts', parts },
    contactSeconds: { low: contactSeconds, wanted: contactSeconds, high: contactSeconds },
    moveWithinSeconds: like?.moveWithinSeconds ?? 30,
    basis: { basis: 'typed', note: 'this test’s own etch' },
  };
  return { row: rowLying(row, contactSeconds), takenFor: level };
}

function withoutTime(words: string): { words: string; seconds: number | null } {
  const parted = /^(.*\D)[\s,]+(\d+(?:\.\d+)?\s*(?:s|sec|seconds?|min|minutes?))$/.exec(words);
  if (!parted) return { words, seconds: null };
  return { words: parted[1]!.replace(/[\s,]+$/, ''), seconds: secondsOfWords(parted[2]!) };
}

function rowsDrawnFirst({ rows }: EtchTable): EtchRow[] {
  return rows.toSorted((a, b) => drawnFirst.indexOf(a.strength) - drawnFirst.indexOf(b.strength));
}

function namedRow(words: string, table: EtchTable): EtchRow | null {
  const rows = rowsDrawnFirst(table);
  const alone = ({ recipe }: EtchRow) =>
    recipe.kind === 'parts' &&
    recipe.parts.length === 1 &&
    [recipe.parts[0]!.material, recipe.parts[0]!.material.split(' ')[0]].includes(
      words.replace(/ alone$/, ''),
    );
  return rows.find(({ name }) => name.toLowerCase() === words) ?? rows.find(alone) ?? null;
}

function droppedRow(words: string, table: EtchTable): EtchRow | null {
  const told = /^(\d+) drops?( .*)?$/.exec(words);
  if (!told) return null;
  const drops = Number(told[1]);
  const row = table.rows.find(
    ({ recipe }) =>
      recipe.kind === 'drops' && drops >= recipe.dropsPer30Ml.low && drops <= recipe.dropsPer30Ml.high,
  );
  if (row?.recipe.kind !== 'drops') return null;
  const recipe = { ...row.recipe, dropsPer30Ml: { low: drops, high: drops } };
  return { ...row, name: `${drops} drops to 30 ml of gum`, recipe };
}

/** "gum and tannic 1:2": handled like the table's row of the strength that its share of tannic comes nearest to. */
function mixedRow(words: string, table: EtchTable): EtchRow | null {
  const told = /^(.+?) (?:and|\+|with) (.+?)(?: (\d+(?:\.\d+)?) ?: ?(\d+(?:\.\d+)?))?$/.exec(words);
  if (!told) return null;
  const materials = [told[1]!, told[2]!].map(materialOf);
  if (materials.includes(null) || materials[0] === materials[1]) return null;
  const [first, second] = [Number(told[3] ?? 1), Number(told[4] ?? 1)];
  if (!(first > 0 && second > 0)) return null;
  const parts = [
    { material: materials[0]!, parts: first },
    { material: materials[1]!, parts: second },
  ];
  const tannic = parts.find(({ material }) => material.startsWith('tannic'));
  const strength =
    tannic === undefined ? 'scant' : tannic.parts / (first + second) > 0.75 ? 'dark' : 'middle';
  const like = table.rows.find((row) => row.strength === strength);
  if (!like) return null;
  const name = `${materials[0]} and ${materials[1]} ${first}:${second}`;
  return { ...like, name, recipe: { kind: 'parts', parts } };
}

function materialOf(words: string): string | null {
  return materialsKnown.find((name) => name === words || name.split(' ')[0] === words) ?? null;
}
