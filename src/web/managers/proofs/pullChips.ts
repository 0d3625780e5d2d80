import type { PullDraft, PullPhotograph } from '../../../records/pull.ts';
import { densityOf, reflectanceOf, type TypedChip } from '../chipBoxes.ts';

/** Kept chips as they are set anew. */
export function typedChips(chips: PullPhotograph['chips']): readonly TypedChip[] {
  return chips.map(({ name, polygonPx, reflectance }) => ({
    name,
    polygonPx,
    density: densityOf(reflectance),
  }));
}

/** Chips as they are kept; those without a known density are left out. */
export function keptChips(chips: readonly TypedChip[]): PullPhotograph['chips'] {
  return chips.flatMap(({ name, polygonPx, density }) =>
    density === null ? [] : [{ name, polygonPx, reflectance: reflectanceOf(density) }],
  );
}

/** The chips of the last photograph of any of these pulls that shows some: where the next ones are likely to lie. */
export function chipsBefore(pulls: readonly Pick<PullDraft, 'photographs'>[]): readonly TypedChip[] {
  const last = pulls.flatMap(({ photographs }) => photographs).findLast(({ chips }) => chips.length > 0);
  return last ? typedChips(last.chips) : [];
}
