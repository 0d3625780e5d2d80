import { fail, ok, type Result } from '../../foundation/result.ts';
import { say } from '../words/say.ts';

/** Why a file of zones or chips was not taken. */
export interface ListFileTrouble {
  readonly message: string;
  readonly remedy: string;
}

/**
 * Reads a zones.json or chips.json as chosen by a person: JSON that is a list of things with the named fields.
 * Only its form is looked at here; the server judges every field when it is asked to measure.
 */
export function readListFile<T>(
  text: string,
  fields: readonly string[],
): Result<readonly T[], ListFileTrouble> {
  let list: unknown;
  try {
    list = JSON.parse(text);
  } catch {
    return fail({
      message: say('This file is not JSON.'),
      remedy: say('Choose the file as it was saved, ending in .json.'),
    });
  }
  if (!Array.isArray(list))
    return fail({
      message: say('This file holds no list.'),
      remedy: say("It should be a list of '{' {fields} '}'.", { fields: fields.join(', ') }),
    });
  const at = list.findIndex(
    (item) => typeof item !== 'object' || item === null || fields.some((field) => !(field in item)),
  );
  if (at >= 0)
    return fail({
      message: say('Item {at} in this file lacks one of: {fields}.', {
        at: at + 1,
        fields: fields.join(', '),
      }),
      remedy: say('Mend it there and choose the file again.'),
    });
  return ok(list as readonly T[]);
}
