import type { Edge, ImageExtent } from '../../records/stone.ts';
import type { BorderCheck } from '../../records/stoneVerdicts.ts';

/** Common practice, no source: gum border at the sides and at the ends, where the scraper lands. */
export const borderRules = {
  sideMm: 15,
  endMm: 25,
  beyondLandingMm: 10,
  scraperOverImageMm: 10,
  scraperInsideStoneMm: 10,
};

/**
 * Checks the gummed borders round an image. The press travels from head to tail; both are ends, the others sides.
 * @param head the edge of the stone that is the image's head.
 * @param landingMm how far in from the end the scraper comes down; the end border is at least that plus 10 mm.
 */
export function borderCheck(
  stone: { readonly widthMm: number; readonly heightMm: number },
  image: ImageExtent,
  head: Edge,
  landingMm = borderRules.endMm - borderRules.beyondLandingMm,
): BorderCheck {
  const marginsMm: Record<Edge, number> = {
    top: image.topLeftMm[1],
    left: image.topLeftMm[0],
    right: stone.widthMm - image.bottomRightMm[0],
    bottom: stone.heightMm - image.bottomRightMm[1],
  };
  const upright = head === 'top' || head === 'bottom';
  const ends: readonly Edge[] = upright ? ['top', 'bottom'] : ['left', 'right'];
  const endMm = Math.max(borderRules.endMm, landingMm + borderRules.beyondLandingMm);
  const needed = (edge: Edge) => (ends.includes(edge) ? endMm : borderRules.sideMm);
  const edges: readonly Edge[] = ['top', 'right', 'bottom', 'left'];
  const enough = Object.fromEntries(edges.map((edge) => [edge, marginsMm[edge] >= needed(edge)])) as Record<
    Edge,
    boolean
  >;
  const sentences = edges
    .filter((edge) => !enough[edge])
    .map((edge) => {
      const kind = ends.includes(edge) ? 'end, where the scraper lands' : 'side';
      return `The ${edge} border is ${Math.round(marginsMm[edge] * 10) / 10} mm; at this ${kind} it should be ${needed(edge)} mm (common practice, no source).`;
    });
  const across = upright ? stone.widthMm : stone.heightMm;
  const imageAcross = upright
    ? image.bottomRightMm[0] - image.topLeftMm[0]
    : image.bottomRightMm[1] - image.topLeftMm[1];
  const least = imageAcross + borderRules.scraperOverImageMm;
  const most = across - borderRules.scraperInsideStoneMm;
  const fits = least <= most;
  return {
    marginsMm,
    enough,
    sentences: fits
      ? sentences
      : [...sentences, 'No scraper is both wider than the image and inside the stone.'],
    scraperMm: fits ? { least, most } : null,
  };
}
