import type { RunState } from '../../../records/bench.ts';
import { told } from '../../words/told.ts';

/** A lift that came too soon or too late stands in the light for so long, seconds: our rule. */
const shownSeconds = 30;

/** What to say of lifts that came too soon or too late, oldest first, in whole sentences. */
export function liftFacts({ facts }: Pick<RunState, 'facts'>): readonly string[] {
  return facts
    .filter(({ fact }) => fact === 'contact-short' || fact === 'contact-long')
    .map(({ words }) => told(words));
}

/** The newest of them, as long as it is new; null otherwise. */
export function newestLiftFact(state: Pick<RunState, 'facts' | 'contacts' | 'at'>): string | null {
  const lifted = Math.max(0, ...state.contacts.map(({ liftedAt }) => (liftedAt ? Date.parse(liftedAt) : 0)));
  const isNew = Date.parse(state.at) - lifted < shownSeconds * 1000;
  return isNew ? (liftFacts(state).at(-1) ?? null) : null;
}
