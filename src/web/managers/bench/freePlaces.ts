import type { PlannedZone } from '../../../records/etch.ts';
import type { EtchStrength } from '../../../records/etchStrength.ts';
import type { KeptPlan, KeptSecondEtch } from '../../../records/keptPlan.ts';
import type { LineStage } from '../../../records/run.ts';
import type { Work } from '../../../records/work.ts';
import { laidRows } from '../../../studio/etch/laidRows.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { midSentenceFirst } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';

/** A place that is etched without a schedule: what its row of the table allows, null where nobody here knows. */
export interface FreePlace {
  readonly id: string;
  readonly letter: string;
  /** Begins small. */
  readonly name: string;
  readonly strength: EtchStrength | null;
  /** What is laid, with its amount where a plan says one; null where nobody here knows. */
  readonly etch: string | null;
  readonly contactSeconds: { readonly low: number; readonly wanted: number | null } | null;
  readonly gapSeconds: number | null;
}

interface Given {
  readonly stage: LineStage;
  readonly work: Pick<Work, 'zones'>;
  readonly plan: KeptPlan | null;
  readonly second: KeptSecondEtch | null;
}

const weakFirst: readonly (EtchStrength | null)[] = ['ground', 'scant', 'light', 'middle', 'dark', null];

/**
 * The places of an etch that no schedule leads, the ground first, then from weak to strong: by the second etch's plan,
 * by the first's where it is that one, else every zone as drawn with nothing known of its times.
 */
export function freePlaces(given: Given): readonly FreePlace[] {
  const places = placesOf(given);
  return places.toSorted((a, b) => weakFirst.indexOf(a.strength) - weakFirst.indexOf(b.strength));
}

function placesOf({ stage, work, plan, second }: Given): readonly FreePlace[] {
  const letters = new Map(work.zones.map(({ id }, index) => [id, zoneLetter(index)]));
  const letterOf = (id: string) => (id === groundId ? groundLetter : (letters.get(id) ?? id));
  if (stage === 'first-etch' && plan) {
    return laidRows(plan.plan).map(({ row, name }) => ({
      id: row.id,
      letter: row.letter,
      name: midSentenceFirst(name),
      strength: row.strength,
      etch: amountOfEtch(row.etch),
      contactSeconds: row.contactSeconds,
      gapSeconds: row.longestGapSeconds,
    }));
  }
  if ((stage === 'second-etch' || stage === 'second-etch-quick') && second) {
    return second.plan.zones
      .filter(({ strength }) => strength !== null)
      .map(({ id, name, strength }) => {
        const row = second.table.rows.find((each) => each.strength === strength);
        return {
          id,
          letter: letterOf(id),
          name: midSentenceFirst(name),
          strength,
          etch: row ? midSentenceFirst(row.name) : null,
          contactSeconds: row?.contactSeconds ?? null,
          gapSeconds: row?.moveWithinSeconds ?? null,
        };
      });
  }
  const unknown = { strength: null, etch: null, contactSeconds: null, gapSeconds: null };
  return [
    { id: groundId, letter: groundLetter, name: 'ground', ...unknown },
    ...work.zones.map(({ id, name }) => ({
      id,
      letter: letterOf(id),
      name: midSentenceFirst(name),
      ...unknown,
    })),
  ];
}

/** What to lay and how much of it, as planned: `gum alone, 25 ml`; null where no rule says. */
export function amountOfEtch(etch: PlannedZone['etch']): string | null {
  return etch && say('{lowered}, {ml} ml', { lowered: midSentenceFirst(etch.name), ml: etch.ml });
}
