import type { EtchStrength } from '../../records/etchStrength.ts';

/** The order of laying: the ground, then from weak to strong, so that no brush comes from strong into weak. */
const laidFirst: readonly (EtchStrength | null)[] = ['ground', 'scant', 'light', 'middle', 'dark', null];
/** The order of lifting and of buffing: light before dark, the ground, which lies longest, after them. */
const liftedFirst: readonly (EtchStrength | null)[] = ['scant', 'light', 'middle', 'dark', 'ground', null];

/**
 * Places in the order in which they are laid where no clock says another: from weak to strong, of one strength the
 * largest first, because it takes longest; of equal ones the order given. Places without a rule come last. Common
 * practice, no source.
 */
export function inOrderLaid<Place>(
  places: readonly Place[],
  of: (place: Place) => { readonly strength: EtchStrength | null; readonly areaCm2: number | null },
): readonly Place[] {
  return places.toSorted((a, b) => {
    const [first, second] = [of(a), of(b)];
    return (
      laidRank(first.strength) - laidRank(second.strength) || (second.areaCm2 ?? 0) - (first.areaCm2 ?? 0)
    );
  });
}

/** 0 for what is laid first. */
export function laidRank(strength: EtchStrength | null): number {
  return laidFirst.indexOf(strength);
}

/** 0 for what is lifted and buffed first; equal ones in the order in which they were laid. */
export function liftedRank(strength: EtchStrength | null): number {
  return liftedFirst.indexOf(strength);
}
