import { frameChange, type SmallFrame } from './stillness.ts';

/** The sharpest view of what the camera looks at. */
export interface SharpestView {
  /** Variance of its Laplacian. */
  readonly variance: number;
  readonly view: SmallFrame;
}

/** From this change on, grey levels of 255, a view shows something else and begins anew: our rule. */
const otherView = 12;

/**
 * Compares a view with the sharpest of this sitting.
 * @returns the sharpest now, and the view's share 0..1 of it
 */
export function besideSharpest(
  best: SharpestView | null,
  now: SharpestView,
): { readonly best: SharpestView; readonly share: number } {
  if (best === null || frameChange(best.view, now.view) > otherView || now.variance >= best.variance)
    return { best: now, share: 1 };
  return { best, share: now.variance / best.variance };
}
