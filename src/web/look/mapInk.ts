import type { Change } from '../../records/comparison.ts';

/** What a map can say of a place. */
export type MapKind = 'lost' | 'filled' | 'scum';

export const mapKinds: readonly MapKind[] = ['lost', 'filled', 'scum'];

/** Screen px to one unit of the hatch tiles. */
export const hatchScale = 1.2;

/** The inks of a hatch on screen: strokes, and what they lie on where the sign stands for itself. */
export interface HatchInk {
  readonly stroke: string;
  readonly under: string;
}

const plain: HatchInk = { stroke: '#1a1714', under: '#fbf9f3' };

/** The hatching itself tells the kinds apart; the ink only makes them show on what they lie on. */
export const mapInk: Readonly<Record<Change, HatchInk>> = {
  lost: { stroke: '#7a3e12', under: '#fbf9f3' },
  // A place that filled in is black: nothing dark would show on it.
  filled: { stroke: '#f0b36b', under: '#1a1714' },
  scum: { stroke: '#9d1c10', under: '#fbf9f3' },
  lighter: plain,
  darker: plain,
  undecided: plain,
  held: plain,
};
