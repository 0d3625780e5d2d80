import type { EtchStrength } from '../../records/etchStrength.ts';
import type { Medium, StrengthRule } from '../../records/medium.ts';
import type { Deposit } from '../../records/zone.ts';

const fixed = (strength: EtchStrength): StrengthRule => ({ kind: 'fixed', strength });
const byDeposit = (otherwise: EtchStrength | null): StrengthRule => ({ kind: 'by-deposit', otherwise });

/**
 * What a drawing is made with, and which etch it asks for: common practice, no source.
 * The last five are families, for a drawing of which no more is known. No name holds a comma: by commas media are parted
 * where they are typed.
 */
export const mediumCatalogue: readonly Medium[] = [
  { id: 'crayon-00', name: 'crayon 00', rule: fixed('dark') },
  { id: 'crayon-0', name: 'crayon 0', rule: fixed('dark') },
  { id: 'crayon-1', name: 'crayon #1', rule: fixed('dark') },
  { id: 'crayon-2', name: 'crayon #2', rule: fixed('middle') },
  { id: 'crayon-3', name: 'crayon #3', rule: fixed('middle') },
  { id: 'crayon-4', name: 'crayon #4', rule: fixed('light') },
  { id: 'crayon-5', name: 'crayon #5', rule: fixed('light') },
  { id: 'rubbing-ink', name: 'rubbing ink', rule: byDeposit('middle') },
  { id: 'tusche-water', name: 'tusche in water', rule: byDeposit(null) },
  { id: 'tusche-spirit', name: 'tusche in spirit', rule: byDeposit(null) },
  { id: 'autographic-ink', name: 'autographic ink', rule: fixed('middle') },
  { id: 'greaseless-ink', name: 'ink without grease', rule: fixed('scant') },
  { id: 'graphite', name: 'graphite', rule: fixed('scant') },
  { id: 'waxy-pencil', name: 'waxy pencil', rule: fixed('dark') },
  { id: 'stumping', name: 'stumping', rule: { kind: 'none' } },
  { id: 'stop-out', name: 'stop-out (gum)', rule: fixed('ground') },
  { id: 'scraped-white', name: 'scraped white', rule: fixed('ground') },
  { id: 'crayon', name: 'crayon of unknown number', rule: byDeposit(null) },
  { id: 'wash', name: 'wash of unknown kind', rule: byDeposit(null) },
  { id: 'pen', name: 'pen lines', rule: fixed('middle') },
  { id: 'solid', name: 'solid', rule: fixed('dark') },
  { id: 'blank', name: 'bare stone', rule: fixed('ground') },
];

/** The medium of that id; undefined where neither the catalogue nor the studio's own media have it. */
export function mediumOf(id: string, own: readonly Medium[] = []): Medium | undefined {
  return mediumCatalogue.find((medium) => medium.id === id) ?? own.find((medium) => medium.id === id);
}

/**
 * A medium as a chart or a title names it: `crayon #1`, or the family by itself (`wash`); an id that is in no catalogue
 * stands as it is.
 */
export function mediumWords(id: string): string {
  return families.has(id) ? id : (mediumOf(id)?.name ?? id);
}

const families: ReadonlySet<string> = new Set(['crayon', 'wash', 'pen', 'solid', 'blank']);

/** The strength that a deposit asks for, when nothing is known of the medium; a spanning wash has none of its own. */
export function strengthOfDeposit(deposit: Exclude<Deposit, 'wash'>): EtchStrength {
  switch (deposit) {
    case 'light':
      return 'light';
    case 'middle':
      return 'middle';
    case 'dark':
    case 'solid':
      return 'dark';
    default:
      return deposit satisfies never;
  }
}
