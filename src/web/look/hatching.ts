/** What a map can say of a place. */
export type MapKind = 'lost' | 'filled' | 'scum';

/** Hatchings as strokes on a square lattice, so that screen, legend and picture show the same sign. */
export interface Hatching {
  readonly latticePx: number;
  /** SVG path data within the lattice square. */
  readonly path: string;
  readonly strokePx: number;
  readonly colour: string;
  /** What the sign lies on where it stands for itself, as in the legend. */
  readonly under: string;
}

export const hatchings: Readonly<Record<MapKind, Hatching>> = {
  lost: {
    latticePx: 9,
    path: 'M4.5 2.1A2.4 2.4 0 1 1 4.49 2.1Z',
    strokePx: 1.6,
    colour: '#7a3e12',
    under: '#fbf9f3',
  },
  filled: {
    latticePx: 7,
    path: 'M0 0L7 7M7 0L0 7',
    strokePx: 1.3,
    colour: '#f0b36b',
    under: '#1a1714',
  },
  scum: {
    latticePx: 10,
    path: 'M1 3H6M6 8H11M-4 8H1',
    strokePx: 1.8,
    colour: '#9d1c10',
    under: '#fbf9f3',
  },
};
