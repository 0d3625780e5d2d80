import type { StonePatch } from '../../../records/testStone.ts';

/** What a press on a patch picks. */
export type Reach = 'patch' | 'row' | 'column';

/**
 * The patches that are picked after a press on one: it joins or leaves with its row or column. They all join unless all
 * were picked already.
 */
export function pickedAfter(
  patches: readonly StonePatch[],
  picked: ReadonlySet<string>,
  pressed: string,
  reach: Reach,
): ReadonlySet<string> {
  const patch = patches.find(({ id }) => id === pressed);
  if (!patch) return picked;
  const along = reach === 'patch' ? null : patch[reach];
  const meant =
    reach === 'patch' || along === null
      ? [pressed]
      : patches.filter((each) => each[reach] === along).map(({ id }) => id);
  const next = new Set(picked);
  const leave = meant.every((id) => picked.has(id));
  for (const id of meant) {
    if (leave) next.delete(id);
    else next.add(id);
  }
  return next;
}

/** What all picked patches got of a factor; null where they differ, '' where none is said. */
export function sharedLevel(
  patches: readonly StonePatch[],
  picked: ReadonlySet<string>,
  factor: string,
): string | null {
  const levels = new Set(
    patches.filter(({ id }) => picked.has(id)).map((each) => each.treatment[factor] ?? ''),
  );
  return levels.size > 1 ? null : ([...levels][0] ?? '');
}

/** Patches in which the picked ones got a level of a factor; an empty level says that it is not known. */
export function withLevel(
  patches: readonly StonePatch[],
  picked: ReadonlySet<string>,
  factor: string,
  level: string,
): StonePatch[] {
  const words = level.trim();
  return patches.map((patch) => {
    if (!picked.has(patch.id)) return patch;
    const { [factor]: _old, ...others } = patch.treatment;
    return { ...patch, treatment: words === '' ? others : { ...others, [factor]: words } };
  });
}
