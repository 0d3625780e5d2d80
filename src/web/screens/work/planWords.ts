import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { EtchPart, EtchSchedule, PlannedPart, PlannedZone } from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { unruledZones } from '../../../studio/etch/laidRows.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** The finding of a plan: whether the people there can keep it, how long it takes, and which zones it leaves out. */
export function planHeadline(kept: KeptPlan): string {
  const without = unruledZones(kept.plan).map(({ letter }) => letter);
  const finding = keptWords(kept);
  return without.length === 0
    ? finding
    : say('{finding}; no rule yet for {without}', { finding, without: without.join(', ') });
}

function keptWords({ plan, request }: KeptPlan): string {
  const who = say('{people, plural, one {One person} other {Two people}}', { people: request.people });
  const end = Math.max(0, ...plan.schedule.steps.map(({ to }) => to));
  switch (plan.schedule.feasible) {
    case true:
      return say('{who} can keep this etch, in {minutesSeconds}', {
        who,
        minutesSeconds: minutesSeconds(end),
      });
    case false:
      return say('{who} cannot keep this etch', { who });
    default:
      return say('Whether {who} can keep this etch is not known', {
        who: who.charAt(0).toLowerCase() + who.slice(1),
      });
  }
}

/** Whether a plan can be kept, in a word or two for a list. */
export function feasibleWords(feasible: EtchSchedule['feasible']): string {
  if (feasible === 'unknown') return say('not known whether it can be kept');
  return feasible ? say('can be kept') : say('cannot be kept');
}

/** An amount as one measures it out: `12.5 ml gum`, or drops where it is counted so. */
export function amountWords({ material, ml, drops }: EtchPart): string {
  return drops === undefined
    ? say('{ml} ml {material}', { ml, material: told(material) })
    : say('{drops} drops {material} ({ml} ml)', { drops, material: told(material), ml });
}

/** What the table asks of the contact, and what the schedule gives. */
export function contactRange(contact: PlannedZone['contactSeconds']): string {
  if (!contact) return say('no rule');
  const { low, wanted, high } = contact;
  return [
    say('at least {minutesSeconds}', { minutesSeconds: minutesSeconds(low) }),
    wanted === null ? null : say('{minutesSeconds} wanted', { minutesSeconds: minutesSeconds(wanted) }),
    high === null
      ? say('no most while wet')
      : say('at most {minutesSeconds}', { minutesSeconds: minutesSeconds(high) }),
  ]
    .filter(Boolean)
    .join(', ');
}

/** How long the etch lies by the schedule; null without one. */
export function plannedContact({ layTo, endsAt }: Pick<PlannedZone | PlannedPart, 'layTo' | 'endsAt'>) {
  return layTo === null || endsAt === null ? null : minutesSeconds(endsAt - layTo);
}

export const changeTitles: Readonly<Record<EtchSchedule['changes'][number]['change'], string>> = {
  'second-person': say('A second person'),
  merge: say('Zones laid as one'),
  'deeper-film': say('A deeper film'),
  'two-stages': say('Two stages'),
};

/** A reason as a sentence of its own. */
export function sentence(words: string): string {
  const whole = upperFirst(words);
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}
