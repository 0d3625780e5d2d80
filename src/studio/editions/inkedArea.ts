import type { Measured } from '../../foundation/measured.ts';
import type { PullTones } from '../../records/pullTones.ts';
import type { WorkZone } from '../../records/work.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { sharedArea } from '../../science/geometry/polygonArea.ts';

/** How an inked area is known. */
export interface InkedArea {
  /** cm², as if every inked place were covered whole. */
  readonly cm2: Measured;
  /** From the print's own zones, from tones of the drawing, or as if all that is drawn were covered whole. */
  readonly how: 'print' | 'drawing' | 'whole';
}

/**
 * The area that carries ink on a print: each drawn zone's coverage times its area, less what is kept bare within it.
 * A zone that was not read counts by the tone of its drawing, one without a tone as covered whole. Zones err together
 * (paper and full film are common to them), so their bounds are added. Our rule.
 * @param read what was read of the print; null: nothing was
 * @param fullFilm darkness of a full film on it, 0..1; null: not known
 * @returns null where nothing is drawn
 */
export function inkedArea(
  zones: readonly WorkZone[],
  read: PullTones | null,
  fullFilm: number | null,
): InkedArea | null {
  const bare = zones.filter(({ intention }) => intention === 'stop-out' || intention === 'scraped-white');
  const drawn = zones.filter(({ intention }) => (intention ?? 'drawn') === 'drawn');
  if (drawn.length === 0) return null;
  const sum = { value: 0, low: 0, high: 0 };
  let [byPrint, byTone] = [false, false];
  const notRead: string[] = [];
  for (const zone of drawn) {
    const within = bare.reduce((held, one) => held + sharedArea(zone.polygonMm, one.polygonMm), 0);
    const cm2 = Math.max(0, Math.abs(signedArea(zone.polygonMm)) - within) / 100;
    const darkness = fullFilm ? (read?.zones.find(({ id }) => id === zone.id)?.darkness ?? null) : null;
    const bounds = darkness ?? asOneOf(zone.tone?.mean ?? 1);
    const film = darkness && fullFilm ? fullFilm : 1;
    for (const bound of ['value', 'low', 'high'] as const) {
      sum[bound] += cm2 * Math.min(1, Math.max(0, bounds[bound] / film));
    }
    if (darkness) byPrint = true;
    else {
      byTone ||= zone.tone !== null;
      notRead.push(zone.name);
    }
  }
  const how = byPrint ? 'print' : byTone ? 'drawing' : 'whole';
  const warnings =
    how === 'print' && notRead.length > 0 ? [`Not read on the print: ${notRead.join(', ')}.`] : [];
  return { cm2: { ...sum, basis: how === 'print' ? 'measured' : 'typed', warnings }, how };
}

function asOneOf(coverage: number) {
  return { value: coverage, low: coverage, high: coverage };
}
