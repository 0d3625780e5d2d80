import { type Cause, causes, type SuspectsQuestion } from '../../../records/suspects.ts';
import { startingLogOdds } from './causeTable.ts';
import { presences } from './featurePresence.ts';
import { outcomeWeight } from './testValue.ts';
import { type Weighed, weighCauses, weighElse } from './weighCauses.ts';

/** So many closed cases of this room weigh as much as the table's own start. Our rule. */
const startingCases = 15;

/** All suspects weighed, "something else" last, the outcomes of tests taken in one after the other. */
export function judgeSuspects({ features, outcomes, room }: SuspectsQuestion): readonly Weighed[] {
  const presence = presences(features);
  const start = (cause: Cause) => startOf(cause, room);
  const added = new Map<Cause, number>(causes.map((cause) => [cause, 0]));
  const weigh = () => weighCauses(presence, start, (cause) => added.get(cause)!);
  let weighed = weigh();
  for (const outcome of outcomes) {
    const before = [...weighed, weighElse(presence, weighed)];
    for (const cause of causes) added.set(cause, added.get(cause)! + outcomeWeight(outcome, cause, before));
    weighed = weigh();
  }
  return [...weighed, weighElse(presence, weighed)];
}

/** The table's start, moved to what this room found so far. */
function startOf(cause: Cause, room: SuspectsQuestion['room']): number {
  if (!room || room.closed === 0) return startingLogOdds;
  const own = 1 / (1 + Math.exp(-startingLogOdds));
  const share = ((room.byCause[cause] ?? 0) + startingCases * own) / (room.closed + startingCases);
  return Math.log(share / (1 - share));
}
