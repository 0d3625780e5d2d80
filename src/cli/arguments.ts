import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';

/** What a command may be given: names of options with a value, and how one looks. */
export type OptionList = Readonly<Record<string, string>>;

export interface Arguments {
  /** By name without dashes; only those that were given. */
  readonly options: ReadonlyMap<string, string>;
  /** Words that belong to no option, in order. */
  readonly rest: readonly string[];
}

/**
 * Reads `--name value` and `--name=value`. Unknown names, names without a value and names given twice are failures.
 * @param known each option's name with an example of its value; an empty example: the option takes no value.
 */
export function readArguments(words: readonly string[], known: OptionList): Result<Arguments> {
  const options = new Map<string, string>();
  const rest: string[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (!word.startsWith('--')) {
      rest.push(word);
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
    if (value === undefined) {
      return fail(
        failure('argument-missing', { name: `a value for --${name}`, example: `--${name} ${example}` }),
      );
    }
    options.set(name, value);
  }
  return ok({ options, rest });
}

/** The value of an option that must be there. */
export function required(given: Arguments, name: string, example: string): Result<string> {
  const value = given.options.get(name);
  return value === undefined
    ? fail(failure('argument-missing', { name: `--${name}`, example: `such as --${name} ${example}` }))
    : ok(value);
}

function splitOnce(word: string): [string, string | undefined] {
  const at = word.indexOf('=');
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}
