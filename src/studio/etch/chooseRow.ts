import type { EtchRow, EtchTable, PlanZone } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type { Medium } from '../../records/medium.ts';
import { mediumOf, strengthOfDeposit } from './mediumCatalogue.ts';

/** The row that a zone's etch follows, or null, and in words why. */
export interface ChosenRow {
  readonly row: EtchRow | null;
  readonly why: string;
  /** Left out but where nothing is laid on purpose. */
  readonly bare?: true;
}

const weakestFirst: readonly EtchStrength[] = ['ground', 'scant', 'light', 'middle', 'dark'];
const noRule = 'no rule here: test a patch first';

/** Below the first a deposit counts as light, below the second as middle, else dark. Our rule, no source. */
export const toneSteps = { light: 0.3, middle: 0.65 };

/** The strength for a measured coverage 0..1, where neither medium nor deposit decides. Our rule, no source. */
export function strengthOfTone(coverage: number): 'light' | 'middle' | 'dark' {
  if (coverage < toneSteps.light) return 'light';
  return coverage < toneSteps.middle ? 'middle' : 'dark';
}

/**
 * Chooses the table row for a zone from its medium, deposit and measured tone.
 * Where they disagree the weaker etch is chosen, because a second etch can follow but lost lights never return.
 * @param ownMedia the studio's own media, beside the starting catalogue.
 * @returns row null where the medium is unknown or the table has no row for it.
 */
export function chooseRow(zone: PlanZone, table: EtchTable, ownMedia: readonly Medium[] = []): ChosenRow {
  if (zone.set) {
    const { row, why, bare } = zone.set;
    return { row, why, ...(bare ? { bare: true } : {}) };
  }
  const wish = wishedStrength(zone, ownMedia);
  if (wish.strength === null) return { row: null, why: wish.why };
  const row = table.rows.find((candidate) => candidate.strength === wish.strength);
  if (!row) return { row: null, why: `${noRule} (this table has no row for ${zone.medium})` };
  return { row, why: wish.why };
}

/** Whether a zone's deposit is a wash that may span strengths, and neither its medium nor its intention decides alone. */
export function spansDeposits(zone: PlanZone, ownMedia: readonly Medium[] = []): boolean {
  const bare = zone.intention === 'stop-out' || zone.intention === 'scraped-white';
  return !bare && zone.deposit === 'wash' && mediumOf(zone.medium, ownMedia)?.rule.kind === 'by-deposit';
}

function wishedStrength(
  zone: PlanZone,
  ownMedia: readonly Medium[],
): { strength: EtchStrength | null; why: string } {
  if (zone.intention === 'stop-out' || zone.intention === 'scraped-white') {
    return { strength: 'ground', why: 'meant to stay bare: etched as ground' };
  }
  const medium = mediumOf(zone.medium, ownMedia);
  if (!medium) return { strength: null, why: `${noRule} (${zone.medium} is not in the catalogue)` };
  switch (medium.rule.kind) {
    case 'none':
      return { strength: null, why: `${noRule} (${medium.name})` };
    case 'fixed':
      return weakened(medium.rule.strength, medium.name, zone);
    case 'by-deposit':
      return fromDeposit(medium.rule.otherwise, medium.name, zone);
    default:
      return medium.rule satisfies never;
  }
}

function weakened(strength: EtchStrength, mediumName: string, zone: PlanZone) {
  if (!zone.deposit || zone.deposit === 'wash' || strength === 'ground' || strength === 'scant') {
    return { strength, why: `the etch for ${mediumName}` };
  }
  const byDeposit = strengthOfDeposit(zone.deposit);
  if (weakestFirst.indexOf(byDeposit) < weakestFirst.indexOf(strength)) {
    return {
      strength: byDeposit,
      why: `${mediumName} would take the ${strength} etch, but the deposit is ${zone.deposit}: the weaker is chosen, a second etch can follow`,
    };
  }
  return { strength, why: `the etch for ${mediumName}` };
}

function fromDeposit(otherwise: EtchStrength | null, mediumName: string, zone: PlanZone) {
  if (zone.deposit === 'wash') return spanningWash(mediumName, zone);
  if (zone.deposit) {
    return {
      strength: strengthOfDeposit(zone.deposit),
      why: `${mediumName}, ${zone.deposit} deposit`,
    };
  }
  if (zone.tone) {
    const strength = strengthOfTone(zone.tone.mean);
    return {
      strength,
      why: `${mediumName}, mean tone ${Math.round(zone.tone.mean * 100)} % counts as ${strength} (our rule, no source)`,
    };
  }
  if (otherwise) return { strength: otherwise, why: `${mediumName}, deposit not stated` };
  return { strength: null, why: `${noRule} (${mediumName} without a deposit or a measured tone)` };
}

function spanningWash(mediumName: string, zone: PlanZone): { strength: EtchStrength; why: string } {
  const [lightest] = zone.split?.parts ?? [];
  if (lightest) return { strength: lightest.strength, why: `${mediumName}: ${zone.split!.why}` };
  const darkest = zone.tone ? `, though its darkest place is ${Math.round(zone.tone.darkest * 100)} %` : '';
  if (zone.tone && strengthOfTone(zone.tone.mean) === strengthOfTone(zone.tone.darkest)) {
    const strength = strengthOfTone(zone.tone.mean);
    return { strength, why: `${mediumName}: mean and darkest tone both count as ${strength}` };
  }
  return {
    strength: 'light',
    why: `${mediumName} spans deposits: planned by its light part${darkest}, because lost lights never return; spot the darks in the second etch`,
  };
}
