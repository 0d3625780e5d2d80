import type { LeavingList, RackLine } from '../../records/rack.ts';
import { gumToSee } from '../../studio/bench/gumToSee.ts';
import { leavingList } from '../../studio/bench/leavingList.ts';
import { inRackOrder } from '../../studio/bench/rackOrder.ts';
import { type RackRow, type ReadRackParts, readRackRows } from './readRack.ts';

/** A stone counts as in hand so long after the last thing that was logged, ms: a working day. Our rule. */
const inHandMs = 16 * 3_600_000;

/**
 * What to do before leaving: for every stone that something was logged of within a day or that asks for gum now, for
 * those of which nobody knows whether they are gummed, and for the room.
 */
export async function readLeaving(parts: ReadRackParts): Promise<LeavingList> {
  const inHand: RackRow[] = [];
  const unsure: RackLine[] = [];
  let acidOut = false;
  for (const row of await readRackRows(parts)) {
    const { gumNow, wet, stage } = row.line.standing;
    if (gumNow || wet || loggedLately(row, parts.now())) {
      inHand.push(row);
      acidOut ||= (stage?.includes('etch') ?? false) && (await etchedWithAcid(parts, row));
    } else if (gumToSee(row.line.standing)) unsure.push(row.line);
  }
  const lines = inHand.map(({ line }) => line);
  return leavingList(inRackOrder(lines), inRackOrder(unsure), acidOut);
}

function loggedLately({ last, press }: RackRow, now: Date): boolean {
  const lately = (at: string | undefined) => at !== undefined && now.getTime() - Date.parse(at) <= inHandMs;
  return lately(last?.receivedAt) || lately(press?.at);
}

async function etchedWithAcid({ runFolds }: ReadRackParts, { run }: RackRow): Promise<boolean> {
  return run !== null && (await runFolds.told(run)).route === 'acid';
}
