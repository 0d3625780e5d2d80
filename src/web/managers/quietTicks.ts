import type { LeavingList } from '../../records/rack.ts';
import { say } from '../words/say.ts';
import type { DraftShelf } from './draftKeeper.ts';
import { stepKey } from './stepKey.ts';

const key = 'stonetone-leaving';
/** So long after the last of them ticks are still of the same leaving, ms: our rule. */
const heldMs = 2 * 3_600_000;

interface Quiet {
  readonly key: string;
  /** By what it is known in a list that was read anew. */
  readonly name: string;
}

/** The steps of a list that tell no log anything until one leaves. */
function quietSteps({ stones, room }: LeavingList): readonly Quiet[] {
  const ofStones = stones.flatMap(({ workId, steps }) =>
    steps.flatMap(({ words, logs }, index) =>
      logs === null ? [{ key: stepKey(workId, index), name: `${workId} ${words}` }] : [],
    ),
  );
  return [
    ...ofStones,
    ...room.map((words, index) => ({ key: stepKey(null, index), name: say('the room {words}', { words }) })),
  ];
}

/** Keys of the steps that were ticked before a reload and are on the list still. */
export function quietTicks(list: LeavingList, shelf: DraftShelf, now: Date): ReadonlySet<string> {
  const names = readNames(shelf, now);
  return new Set(
    quietSteps(list)
      .filter(({ name }) => names.has(name))
      .map((step) => step.key),
  );
}

/** Lays the ticks that no log holds on the shelf. A full or forbidden shelf costs only the reload. */
export function keepQuietTicks(
  list: LeavingList,
  { shelf, now }: { readonly shelf: DraftShelf; readonly now: () => Date },
  ticked: ReadonlySet<string>,
): void {
  const names = quietSteps(list)
    .filter((step) => ticked.has(step.key))
    .map(({ name }) => name);
  try {
    shelf.setItem(key, JSON.stringify({ at: now().getTime(), names }));
  } catch {
    // the ticks are still on the page
  }
}

/** Somebody left: the next leaving begins with nothing ticked. */
export function dropQuietTicks(shelf: DraftShelf): void {
  try {
    shelf.removeItem(key);
  } catch {
    // what is there is dropped by its age
  }
}

function readNames(shelf: DraftShelf, now: Date): ReadonlySet<unknown> {
  try {
    const kept: { at?: unknown; names?: unknown } = JSON.parse(shelf.getItem(key) ?? '{}');
    const age = now.getTime() - Number(kept.at);
    return new Set(age >= 0 && age <= heldMs && Array.isArray(kept.names) ? kept.names : []);
  } catch {
    return new Set();
  }
}
