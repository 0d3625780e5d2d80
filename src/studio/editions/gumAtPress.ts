import type { Standing } from '../../records/bench.ts';
import type { LedgerState } from '../../records/ledger.ts';
import { gumAfterSeconds } from './ledgerState.ts';

/**
 * How a ledger stands, with what the stone's own log tells since: gummed at the bench after the last print it waits under
 * gum, and gum taken off there ends a pause.
 * @param stone null: not known here. @param now the moment that `state` was worked out for.
 */
export function gumAtPress(
  state: LedgerState,
  stone: Pick<Standing, 'gummed' | 'since'> | null,
  now: Date,
): LedgerState {
  if (state.stillSeconds === null || stone === null || stone.since === null) return state;
  const since = Date.parse(stone.since);
  const lastWork = now.getTime() - 1000 * state.stillSeconds;
  const underGum = state.pause?.gummed === true;
  if (stone.gummed === 'yes' && !underGum && since > lastWork) {
    return { ...state, pause: { since: stone.since, gummed: true }, gumNow: false };
  }
  if (stone.gummed === 'no' && underGum && since > Date.parse(state.pause.since)) {
    const stillSeconds = Math.max(0, (now.getTime() - since) / 1000);
    return { ...state, pause: null, stillSeconds, gumNow: stillSeconds > gumAfterSeconds };
  }
  return state;
}
