import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';

/** What a command may be given: names of options with a value, and how one looks. */
export type OptionList = Readonly<Record<string, string>>;

export interface Arguments {
  /** By name without dashes; only those that were given. */
  readonly options: ReadonlyMap<string, string>;
  /** The one word that belongs to no option, such as a file; null without one. */
  readonly word: string | null;
}

/**
 * Reads `--name value` and `--name=value`. Unknown names, names without a value, names given twice and words too many
 * are failures.
 * @param known each option's name with an example of its value; an empty example: the option takes no value.
 * @param wordsAllowed how many words may belong to no option.
 */
export function readArguments(
  words: readonly string[],
  known: OptionList,
  wordsAllowed: 0 | 1 = 0,
): Result<Arguments> {
  const options = new Map<string, string>();
  let free: string | null = null;
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (!word.startsWith('--')) {
      if (wordsAllowed === 0 || free !== null) return fail(failure('argument-unknown', { name: word }));
      free = word;
      continue;
    }
    const [name, joined] = splitOnce(word.slice(2));
    const example = known[name];
    if (example === undefined) return fail(failure('argument-unknown', { name: `--${name}` }));
    if (options.has(name)) {
      return fail(failure('argument-malformed', { name: `--${name}`, why: 'it is given twice', example }));
    }
    if (example === '') {
      options.set(name, '');
      continue;
    }
    const value = joined ?? words[++i];
    if (value === undefined || (joined === undefined && isOption(value, known))) {
      return fail(
        failure('argument-missing', { name: `a value for --${name}`, example: `--${name} ${example}` }),
      );
    }
    options.set(name, value);
  }
  return ok({ options, word: free });
}

/** The value of an option that must be there. */
export function required(given: Arguments, name: string, example: string): Result<string> {
  const value = given.options.get(name);
  return value === undefined
    ? fail(failure('argument-missing', { name: `--${name}`, example: `such as --${name} ${example}` }))
    : ok(value);
}

/** A file may be called --odd; one called as an option is must be given as --name=value. */
function isOption(word: string, known: OptionList): boolean {
  return word.startsWith('--') && splitOnce(word.slice(2))[0] in known;
}

function splitOnce(word: string): [string, string | undefined] {
  const at = word.indexOf('=');
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}
