import type {
  EtchPart,
  EtchSchedule,
  PlannedPart,
  PlannedZone,
  ScheduleStep,
} from '../../../records/etch.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { minutesSeconds } from '../../../studio/etch/clockWords.ts';
import { unruledZones } from '../../../studio/etch/laidRows.ts';

/** The finding of a plan: whether the people there can keep it, how long it takes, and which zones it leaves out. */
export function planHeadline(kept: KeptPlan): string {
  const without = unruledZones(kept.plan).map(({ letter }) => letter);
  const finding = keptWords(kept);
  return without.length === 0 ? finding : `${finding}; no rule yet for ${without.join(', ')}`;
}

function keptWords({ plan, request }: KeptPlan): string {
  const who = request.people === 1 ? 'One person' : 'Two people';
  const end = Math.max(0, ...plan.schedule.steps.map(({ to }) => to));
  switch (plan.schedule.feasible) {
    case true:
      return `${who} can keep this etch, in ${minutesSeconds(end)} minutes`;
    case false:
      return `${who} cannot keep this etch`;
    default:
      return `Whether ${who.toLowerCase()} can keep this etch is not known`;
  }
}

/** Whether a plan can be kept, in a word or two for a list. */
export function feasibleWords(feasible: EtchSchedule['feasible']): string {
  if (feasible === 'unknown') return 'not known whether it can be kept';
  return feasible ? 'can be kept' : 'cannot be kept';
}

/** An amount as one measures it out: `12.5 ml gum`, or drops where it is counted so. */
export function amountWords({ material, ml, drops }: EtchPart): string {
  return drops === undefined ? `${ml} ml ${material}` : `${drops} drops ${material} (${ml} ml)`;
}

/** What the table asks of the contact, and what the schedule gives. */
export function contactRange(contact: PlannedZone['contactSeconds']): string {
  if (!contact) return 'no rule';
  const { low, wanted, high } = contact;
  return [
    `at least ${minutesSeconds(low)}`,
    wanted === null ? null : `${minutesSeconds(wanted)} wanted`,
    high === null ? 'no most while wet' : `at most ${minutesSeconds(high)}`,
  ]
    .filter(Boolean)
    .join(', ');
}

/** How long the etch lies by the schedule; null without one. */
export function plannedContact({ layTo, endsAt }: Pick<PlannedZone | PlannedPart, 'layTo' | 'endsAt'>) {
  return layTo === null || endsAt === null ? null : minutesSeconds(endsAt - layTo);
}

export const actionWords: Readonly<Record<ScheduleStep['action'], string>> = {
  lay: 'lay',
  move: 'move',
  lift: 'lift',
};

export const changeTitles: Readonly<Record<EtchSchedule['changes'][number]['change'], string>> = {
  'second-person': 'A second person',
  merge: 'Zones laid as one',
  'deeper-film': 'A deeper film',
  'two-stages': 'Two stages',
};

/** A reason as a sentence of its own. */
export function sentence(words: string): string {
  const whole = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}
