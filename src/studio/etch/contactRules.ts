import { upperFirst } from '../../foundation/upperFirst.ts';
import type { EtchPlan, PlannedZone } from '../../records/etch.ts';
import type { EtchStrength } from '../../records/etchStrength.ts';
import type { KeptSecondEtch } from '../../records/keptPlan.ts';
import type { LineStage } from '../../records/run.ts';
import { inOrderLaid } from './etchOrder.ts';
import { laidRows } from './laidRows.ts';
import { groundId } from './planAreas.ts';
import { groundLetter, zoneLetter } from './zoneLetters.ts';

/** What one place gets in one etch, wherever that etch is run: by a clock, without one, or only looked back on. */
export interface ContactRule {
  /** A zone's id, or that of a split wash's part. */
  readonly id: string;
  readonly letter: string;
  /** Begins with a capital. */
  readonly name: string;
  readonly strength: EtchStrength | null;
  /** Null where the plan does not say. */
  readonly areaCm2: number | null;
  /** What is laid, its millilitres where a plan says them; null where no rule does. */
  readonly etch: { readonly name: string; readonly ml: number | null } | null;
  /** Seconds; null where nobody here knows. */
  readonly contactSeconds: PlannedZone['contactSeconds'];
  readonly gapSeconds: number | null;
}

/** What a run's etches go by: the plan of the first, and those of second etches, newest first. */
export interface EtchesPlanned {
  readonly first: EtchPlan | null;
  readonly seconds: readonly KeptSecondEtch[];
}

/**
 * The rules of an etch's contacts, in the order of laying; empty where nothing was planned.
 * @param begunMs when the etch began, ms: a plan of a second etch that was made after that was not followed in it
 */
export function contactRules(
  planned: EtchesPlanned,
  stage: LineStage,
  begunMs: number,
): readonly ContactRule[] {
  return contactRulesOf(planned)(stage, begunMs);
}

/** The same for many questions of one run: what a plan rules is worked out once. */
export function contactRulesOf({
  first,
  seconds,
}: EtchesPlanned): (stage: LineStage, begunMs: number) => readonly ContactRule[] {
  let byFirst: readonly ContactRule[] | null = null;
  const bySecond = new Map<KeptSecondEtch, readonly ContactRule[]>();
  const moments = seconds.map(({ createdAt }) => Date.parse(createdAt));
  return (stage, begunMs) => {
    switch (stage) {
      case 'first-etch':
        byFirst ??= first ? inOrderLaid(firstRules(first), (rule) => rule) : [];
        return byFirst;
      case 'second-etch':
      case 'second-etch-quick': {
        const followed = seconds[moments.findIndex((ms) => ms <= begunMs)];
        if (followed === undefined) return [];
        const held = bySecond.get(followed) ?? inOrderLaid(secondRules(followed, first), (rule) => rule);
        bySecond.set(followed, held);
        return held;
      }
      default:
        return [];
    }
  };
}

/** A place without a rule, or on which nothing is laid on purpose, is led nowhere. */
function firstRules(plan: EtchPlan): ContactRule[] {
  const ruled = laidRows(plan).filter(({ row }) => row.etch !== null);
  return ruled.map(({ row, name }) => ({
    id: row.id,
    letter: row.letter,
    name,
    strength: row.strength,
    areaCm2: row.areaCm2,
    etch: row.etch,
    contactSeconds: row.contactSeconds,
    gapSeconds: row.longestGapSeconds,
  }));
}

/** Where the second etch leaves a zone out, nothing is laid. */
function secondRules({ plan, table }: KeptSecondEtch, first: EtchPlan | null): ContactRule[] {
  const drawn = plan.zones.filter(({ id }) => id !== groundId);
  return plan.zones
    .filter(({ strength }) => strength !== null)
    .map(({ id, name, strength }) => {
      const row = table.rows.find((each) => each.strength === strength);
      return {
        id,
        letter: id === groundId ? groundLetter : zoneLetter(drawn.findIndex((zone) => zone.id === id)),
        name: upperFirst(name),
        strength,
        areaCm2: first?.zones.find((zone) => zone.id === id)?.areaCm2 ?? null,
        etch: row ? { name: row.name, ml: null } : null,
        contactSeconds: row?.contactSeconds ?? null,
        gapSeconds: row?.moveWithinSeconds ?? null,
      };
    });
}
