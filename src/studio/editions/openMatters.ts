import type { Edition } from '../../records/edition.ts';
import type { LedgerState } from '../../records/ledger.ts';

/** Prints read at ages that differ by more than this share of the older aren't compared; from a day on all are dry. Our rule. */
const ageSlack = 0.25;
const dryMinutes = 1440;

/** What is still open before an edition is handed out, in sentences; none: nothing that is known of. */
export function openMatters(edition: Edition, ledger: LedgerState): readonly string[] {
  const { prints, size } = edition;
  const said: string[] = [];
  const known = new Set(ledger.impressions.map(({ id }) => id));
  const lost = prints.filter(({ impression }) => !known.has(impression)).length;
  if (lost > 0)
    said.push(
      `${lost === 1 ? '1 number is' : `${lost} numbers are`} given to prints that were taken back at the press since: choose again.`,
    );
  if (prints.length === 0) return [...said, 'Nothing is numbered yet.'];
  const numbered = prints.filter(({ kind }) => kind === 'edition').length;
  if (numbered < size) said.push(`${numbered} of ${size} are numbered.`);
  const rest = ledger.impressions.length - (prints.length - lost);
  if (rest > 0) said.push(`${rest === 1 ? '1 print is' : `${rest} prints are`} neither given nor destroyed.`);
  if (edition.signedOn === null) said.push('Not noted: when they were signed.');
  if (edition.cancelledOn === null) said.push('Not noted: that the image was cancelled on the stone.');
  return said;
}

/** Whether prints were looked at again when dry, all at one age, in a sentence. */
export function dryBackWords(ledger: LedgerState): string {
  const whole = ledger.impressions.filter(({ verdict }) => verdict !== 'torn');
  const ages = whole.map(({ checked }) => checked?.ageMinutes ?? null);
  const checked = whole.filter(({ checked }) => checked !== null).length;
  if (checked === 0) return 'None is checked dry yet: a print dries paler, so look again after a day.';
  if (checked < whole.length) return `${checked} of ${whole.length} are checked dry.`;
  const known = ages.filter((age) => age !== null);
  if (known.length < ages.length)
    return 'All are checked, but not at a stated age: can’t tell whether they compare.';
  const [youngest, oldest] = [Math.min(...known), Math.max(...known)];
  if (youngest >= dryMinutes) return 'All are checked dry, a day old or more.';
  return oldest - youngest <= ageSlack * oldest
    ? 'All are checked at one age, but wet: look again after a day.'
    : `They were checked at different ages, from ${ageWords(youngest)} to ${ageWords(oldest)} after pulling, so they don’t compare: look at all again on one day.`;
}

/** An age in words, rounded as far as it matters. @param minutes since the print was pulled. */
export function ageWords(minutes: number): string {
  if (minutes < 90) return `${Math.round(minutes)} min`;
  if (minutes < 2880) return `${Math.round(minutes / 60)} h`;
  return `${Math.round(minutes / 1440)} days`;
}
