import type { CopiesState, CopyCheck } from '../../records/copies.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';
import { byteWords } from '../parts/byteWords.ts';
import { dayWords } from '../parts/entryWords.ts';

/** How copies stand, in one line. */
export function copiesHeadline({ folder, lastGood, failed, copies }: CopiesState): string {
  if (folder === null) return 'No copies are made';
  if (failed) return 'The last copy could not be made';
  if (lastGood) return `Copied whole on ${dayWords(lastGood.madeAt)}`;
  if (copies.some(({ check }) => check?.failure)) return 'No copy is known to be whole';
  return copies.length > 0 ? 'No copy was read back yet today' : 'No copy is made yet';
}

/** What is being done now; null: nothing. */
export function busyWords({ busy, lastGood, copies }: CopiesState): string | null {
  if (busy === null) return null;
  if (busy.act === 'checking') return `Reading the copy of ${isoDayWords(busy.day)} back …`;
  if (busy.bytes === null) return 'Copying …';
  const before = copies.find(({ file }) => file === lastGood?.file);
  const of = before ? `; the last copy was ${byteWords(before.bytes)}` : '';
  return `Copying, ${byteWords(busy.bytes)} written${of} …`;
}

/** What was found when a copy was read back. */
export function checkWords(check: CopyCheck | null): string {
  if (check === null) return 'not read back since Stonetone was started';
  if (check.failure) return `${check.failure.message} ${check.failure.remedy}`;
  const many = check.photographs === 1 ? '1 photograph' : `${check.photographs} photographs`;
  return `whole, with ${many}; read back ${dayWords(check.at)}`;
}

/** Which copies are kept and which go. */
export function thinningWords({ days, weeks, months }: CopiesState['keeps']): string {
  return `Kept are the newest ${days} days, and the newest copy of each of the newest ${weeks} weeks and ${months} months that have one. Older ones go, but only after a new one was read back whole.`;
}
