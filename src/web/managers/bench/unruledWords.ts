import type { EtchPlan } from '../../../records/etch.ts';
import { unruledZones } from '../../../studio/etch/laidRows.ts';
import { say } from '../../words/say.ts';

/** Which zones nothing leads, for want of a rule. */
export function unruledWords(plan: EtchPlan): readonly string[] {
  return unruledZones(plan).map(({ letter, name }) =>
    say('{letter}, {name}: no rule in this plan, so nothing here leads its etch', { letter, name }),
  );
}
