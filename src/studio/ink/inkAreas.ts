import type { EtchStrength } from '../../records/etchStrength.ts';
import type { InkQuestion } from '../../records/inkAnswer.ts';
import type { WorkZone } from '../../records/work.ts';
import { signedArea } from '../../science/geometry/polygon.ts';
import { sharedArea } from '../../science/geometry/polygonArea.ts';

/** From this coverage on a zone counts as solid; as where marks count as closed. */
const solidFrom = 0.93;
/** A zone called solid is taken for covered whole, one without a measured tone too: an upper bound. */
const unmeasured = 1;

/** How a drawing is shared out for its ink, and the zones of which that is not known. */
export interface InkAreas extends Pick<InkQuestion, 'areasCm2' | 'solidShare' | 'coveredCm2'> {
  readonly notKnown: readonly string[];
}

/**
 * Sorts what is drawn into light, middle and heavy work by deposit, else by measured tone, else by medium. What is meant to
 * stay bare carries no ink, and takes its place out of what it lies in.
 * @param strengthOf how strong an etch a medium asks for; null where that is not known
 */
export function inkAreas(
  zones: readonly WorkZone[],
  strengthOf: (medium: string) => EtchStrength | null,
  strengthOfTone: (coverage: number) => 'light' | 'middle' | 'dark',
): InkAreas {
  const bare = zones.filter(({ intention }) => intention === 'stop-out' || intention === 'scraped-white');
  const areas = { light: 0, middle: 0, dark: 0 };
  const notKnown: string[] = [];
  let [covered, measuredSolid, measured] = [0, 0, false];
  for (const zone of zones) {
    if ((zone.intention ?? 'drawn') !== 'drawn') continue;
    const heavy = heaviness(zone, strengthOf, strengthOfTone);
    if (heavy === 'bare') continue;
    if (heavy === null) {
      notKnown.push(zone.name);
      continue;
    }
    const within = bare.reduce((sum, one) => sum + sharedArea(zone.polygonMm, one.polygonMm), 0);
    const cm2 = Math.max(0, Math.abs(signedArea(zone.polygonMm)) - within) / 100;
    areas[heavy] += cm2;
    covered += cm2 * (zone.tone?.mean ?? unmeasured);
    if (zone.tone?.basis !== 'measured') continue;
    measured = true;
    if (zone.tone.mean >= solidFrom) measuredSolid += cm2;
  }
  const whole = areas.light + areas.middle + areas.dark;
  return {
    areasCm2: areas,
    coveredCm2: zones.some(({ tone }) => tone !== null) ? covered : null,
    solidShare: measured && whole > 0 ? measuredSolid / whole : null,
    notKnown,
  };
}

function heaviness(
  { deposit, tone, medium }: WorkZone,
  strengthOf: (medium: string) => EtchStrength | null,
  strengthOfTone: (coverage: number) => 'light' | 'middle' | 'dark',
): 'light' | 'middle' | 'dark' | 'bare' | null {
  if (deposit === 'solid') return 'dark';
  if (deposit !== undefined && deposit !== 'wash') return deposit;
  if (tone !== null) return strengthOfTone(tone.mean);
  const strength = strengthOf(medium);
  if (strength === 'ground') return 'bare';
  // little grease, little ink
  return strength === 'scant' ? 'light' : strength;
}
