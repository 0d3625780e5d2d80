import type { BlindSitting, PrintReading } from '../../../records/patchReading.ts';
import type { ListState, TestStone } from '../../../records/testStone.ts';
import type { TestStoneEvent } from '../../../records/testStoneEvent.ts';
import { sittingsIn } from './foldTestStoneEvents.ts';

/**
 * Whether the list of who got what on a planned test stone is still sealed: until on one print every patch that is meant to
 * print has its verdict, by the camera, by hand ("not to be read" is one) or in a blind reading ("could not tell" is one); or
 * until it was opened by an act of its own.
 */
export function listState(
  stone: Pick<TestStone, 'patches'>,
  events: readonly TestStoneEvent[],
  prints: readonly PrintReading[],
): ListState {
  const sittings = sittingsIn(events, stone);
  const meant = stone.patches.filter(({ intention }) => intention === 'image' || intention === 'control');
  const untold = Math.min(
    meant.length,
    ...prints.map((print) => {
      const told = toldPatches(print, sittings);
      return meant.filter(({ id }) => !told.has(id)).length;
    }),
  );
  const opening = events.find((event) => event.kind === 'list-opened');
  return {
    sealed: untold > 0 && opening === undefined,
    untold,
    opened:
      opening?.kind === 'list-opened'
        ? {
            at: opening.at,
            by: opening.actor,
            why: opening.payload.why,
            untold: opening.payload.untold ?? 0,
          }
        : null,
  };
}

function toldPatches(
  { print, patches }: PrintReading,
  sittings: readonly BlindSitting[],
): ReadonlySet<string> {
  const read = patches.filter(({ hold, corrections }) => hold !== null || corrections.length > 0);
  const seen = sittings.filter((sitting) => sitting.print === print).flatMap(({ answers }) => answers);
  return new Set([...read, ...seen].map(({ patch }) => patch));
}

/** A planned test stone as whoever reads it may see it: patches by their numbers, without what they got. */
export function sealedStone(stone: TestStone): TestStone {
  return {
    ...stone,
    patches: stone.patches.map((patch) => ({
      ...patch,
      treatment: {},
      intention: patch.intention === 'control' ? 'image' : patch.intention,
    })),
  };
}
