import type { Store } from '../../store/openStore.ts';
import { type PressHand, pressHand } from '../../studio/editions/pressHand.ts';

/** What was done to the stones of works at the press last, by the works' ids; those that nobody printed are left out. */
export async function pressHands(
  { waits }: Pick<Store, 'waits'>,
  workIds: readonly string[],
): Promise<ReadonlyMap<string, PressHand>> {
  const hands = new Map<string, PressHand>();
  for (const { workId, entries } of await waits.lastAtPress(workIds)) {
    const hand = pressHand(entries);
    const before = hands.get(workId);
    if (hand && (!before || Date.parse(hand.at) > Date.parse(before.at))) hands.set(workId, hand);
  }
  return hands;
}
