import type { PlannedZone } from '../../../records/etch.ts';
import type { EtchStrength } from '../../../records/etchStrength.ts';
import type { LineStage } from '../../../records/run.ts';
import type { Work } from '../../../records/work.ts';
import { contactRules, type EtchesPlanned } from '../../../studio/etch/contactRules.ts';
import { groundId } from '../../../studio/etch/planAreas.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { midSentenceFirst } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';

/** A place that is etched without a schedule: what its rule allows, null where nobody here knows. */
export interface FreePlace {
  readonly id: string;
  readonly letter: string;
  /** Begins small. */
  readonly name: string;
  readonly strength: EtchStrength | null;
  /** What is laid, with its amount where a plan says one; null where nobody here knows. */
  readonly etch: string | null;
  readonly contactSeconds: PlannedZone['contactSeconds'];
  readonly gapSeconds: number | null;
}

interface Given {
  readonly stage: LineStage;
  readonly work: Pick<Work, 'zones'>;
  readonly planned: EtchesPlanned;
}

/**
 * The places of an etch that no schedule leads, in the order of laying: by the same rules as its plan and its step sheet,
 * else every zone as drawn, the ground first, with nothing known of its times.
 */
export function freePlaces({ stage, work, planned }: Given): readonly FreePlace[] {
  const rules = contactRules(planned, stage, Number.POSITIVE_INFINITY);
  if (rules.length > 0) {
    return rules.map(({ id, letter, name, strength, etch, contactSeconds, gapSeconds }) => ({
      id,
      letter,
      name: midSentenceFirst(name),
      strength,
      etch: amountOfEtch(etch),
      contactSeconds,
      gapSeconds,
    }));
  }
  const unknown = { strength: null, etch: null, contactSeconds: null, gapSeconds: null };
  return [
    { id: groundId, letter: groundLetter, name: say('ground'), ...unknown },
    ...work.zones.map(({ id, name }, index) => ({
      id,
      letter: zoneLetter(index),
      name: midSentenceFirst(name),
      ...unknown,
    })),
  ];
}

/** What to lay and how much of it, as planned: `gum alone, 25 ml`; null where no rule says. */
export function amountOfEtch(
  etch: { readonly name: string; readonly ml: number | null } | null,
): string | null {
  if (etch === null) return null;
  const lowered = midSentenceFirst(etch.name);
  return etch.ml === null ? lowered : say('{lowered}, {ml} ml', { lowered, ml: etch.ml });
}
