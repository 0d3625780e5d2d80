import type { Edge } from './stone.ts';

/** The gummed borders round an image, judged. */
export interface BorderCheck {
  readonly marginsMm: Readonly<Record<Edge, number>>;
  /** Whether each border is wide enough. */
  readonly enough: Readonly<Record<Edge, boolean>>;
  readonly sentences: readonly string[];
  /** Scraper lengths that fit: wider than the image, inside the stone; null where none does. */
  readonly scraperMm: { readonly least: number; readonly most: number } | null;
}

/** Level, wedge and thinness of a stone, judged. */
export interface StoneVerdict {
  readonly level: 'level' | 'not level' | 'not measured';
  readonly wedge: 'even' | 'wedge' | 'not measured';
  /** Difference between thickest and thinnest corner; null unless all four are measured. */
  readonly wedgeMm: number | null;
  readonly sentences: readonly string[];
}
