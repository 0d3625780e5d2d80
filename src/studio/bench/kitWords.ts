import type { KitDraft } from '../../records/kit.ts';
import { isoDayWords } from '../../science/calendar/dateWords.ts';

/** A tool or set-up in one line, as a log keeps it: its name, then what is known; what isn't is left out. */
export function kitWords(kit: KitDraft): string {
  return [kit.name, ...factsOf(kit)].join(', ');
}

/** What is known of a tool or set-up beside its name. */
export function factsOf(kit: KitDraft): readonly string[] {
  const facts = (...each: readonly (string | null)[]) =>
    each.filter((one) => one !== null && one !== '') as string[];
  const known = (value: number | null, words: (value: number) => string) =>
    value === null ? null : words(value);
  switch (kit.tool) {
    case 'roller':
      return facts(
        kit.nap,
        known(kit.widthMm, (mm) => `${mm} mm`),
        kit.conditionedOn === null
          ? 'conditioned: not known'
          : `conditioned ${isoDayWords(kit.conditionedOn)}`,
      );
    case 'ink':
      return facts(
        kit.softParts === null && kit.stiffParts === null
          ? null
          : `${kit.softParts ?? '?'}:${kit.stiffParts ?? '?'} soft:stiff`,
        known(kit.modifierPercent, (share) => `${share} % modifier`),
        known(kit.stringCm, (cm) => `string breaks at ${cm} cm`),
      );
    case 'press':
      return facts(
        known(
          kit.pressureEighths,
          (eighths) => `${eighths > 0 ? '+' : eighths < 0 ? '−' : ''}${Math.abs(eighths)}/8 from contact`,
        ),
        kit.packing,
        known(kit.scraperMm, (mm) => `scraper ${mm} mm`),
      );
    case 'cloth':
      return facts(kit.cloth);
    case 'paper':
      return facts(
        known(kit.gramsPerM2, (grams) => `${grams} g/m²`),
        kit.damp === null ? null : kit.damp ? 'damp' : 'dry',
      );
    default:
      return kit satisfies never;
  }
}
