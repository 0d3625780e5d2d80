import type { EditionCount } from '../../../studio/editions/editionCount.ts';
import { say } from '../../words/say.ts';

/** How far the printing is, in the same words at the press, on the plan and beside the numbers. */
export function CountWords({ count }: { count: EditionCount }) {
  return (
    <>
      <p>{goodWords(count)}</p>
      <p className="soft">{wantedWords(count)}</p>
    </>
  );
}

/** How many are good, how many more to pull, how many sheets are left. */
export function goodWords({ wanted, good, more, sheets, sheetsLeft }: EditionCount): string {
  if (more === 0) return say('{good} good prints of {wanted} wanted: enough.', { good, wanted });
  if (sheets === null || sheetsLeft === null)
    return say('{good} good of {wanted} wanted, {more} more to pull.', { good, wanted, more });
  if (sheetsLeft < more)
    return say(
      '{good} good of {wanted} wanted, {more} more to pull. Only {left, plural, =0 {none} other {#}} of {sheets} sheets {left, plural, one {is} other {are}} left: lay out more.',
      { good, wanted, more, left: sheetsLeft, sheets },
    );
  return say(
    '{good} good of {wanted} wanted, {more} more to pull. {left} of {sheets} sheets {left, plural, one {is} other {are}} left.',
    { good, wanted, more, left: sheetsLeft, sheets },
  );
}

/** What the wanted ones are. */
export function wantedWords({ wanted, numbered, artistProofs }: EditionCount): string {
  return say(
    '{wanted} wanted: {numbered} numbered, {artistProofs, plural, =0 {no artist’s proof} one {# artist’s proof} other {# artist’s proofs}}, one for the printer, one for the archive.',
    { wanted, numbered, artistProofs },
  );
}
