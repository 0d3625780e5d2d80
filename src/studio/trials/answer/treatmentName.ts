import { kindOfName } from '../design/wishOfPlan.ts';

/**
 * A treatment in the order in which it lies on the stone: `gum alone over crayon #5`; what is neither drawn nor laid over it
 * stands before, parted by commas.
 * @param treatment levels by factor
 */
export function treatmentName(treatment: Readonly<Record<string, string>>): string {
  const levels = (drawn: boolean) =>
    Object.entries(treatment)
      .filter(([factor]) => ['medium', 'deposit'].includes(kindOfName(factor)) === drawn)
      .map(([, level]) => level)
      .join(', ');
  return [levels(false), levels(true)].filter((words) => words !== '').join(' over ');
}
