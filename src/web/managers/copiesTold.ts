import type { CopiesState, CopyCheck } from '../../records/copies.ts';
import { byteWords } from '../parts/byteWords.ts';
import { dayWords } from '../parts/entryWords.ts';
import { dayOf } from '../words/moments.ts';
import { say } from '../words/say.ts';

/** How copies stand, in one line. */
export function copiesHeadline({ folder, lastGood, notMade, copies }: CopiesState): string {
  if (folder === null) return say('No copies are made');
  if (notMade) return say('The last copy could not be made');
  if (lastGood) return say('Copied whole on {day}', { day: dayWords(lastGood.madeAt) });
  if (copies.some(({ check }) => check?.failure)) return say('No copy is known to be whole');
  return copies.length > 0 ? say('No copy was read back yet today') : say('No copy is made yet');
}

/** What is being done now; null: nothing. */
export function busyWords({ busy, lastGood, copies }: CopiesState): string | null {
  if (busy === null) return null;
  if (busy.act === 'checking') return say('Reading the copy of {isoDay} back …', { isoDay: dayOf(busy.day) });
  if (busy.bytes === null) return say('Copying …');
  const before = copies.find(({ file }) => file === lastGood?.file);
  const of = before ? say('; the last copy was {byte}', { byte: byteWords(before.bytes) }) : '';
  return say('Copying, {byte} written{of} …', { byte: byteWords(busy.bytes), of });
}

/** What was found when a copy was read back. */
export function checkWords(check: CopyCheck | null): string {
  if (check === null) return say('not read back since Stonetone was started');
  if (check.failure) return `${check.failure.message} ${check.failure.remedy}`;
  const many =
    check.photographs === 1
      ? say('1 photograph')
      : say('{photographs} photographs', { photographs: check.photographs });
  return say('whole, with {many}; read back {day}', { many, day: dayWords(check.at) });
}

/** Which copies are kept and which go. */
export function thinningWords({ days, weeks, months }: CopiesState['keeps']): string {
  return say(
    'Kept are the newest {days} days, and the newest copy of each of the newest {weeks} weeks and {months} months that have one. Older ones go, but only after a new one was read back whole.',
    { days, weeks, months },
  );
}
