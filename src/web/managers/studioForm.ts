import type { StudioDraft, StudioPerson, StudioSettings } from '../../records/studio.ts';
import { isTimeZone } from '../../science/calendar/zonedTime.ts';
import { say } from '../words/say.ts';
import { exceptionsText, hoursText, typedExceptions, typedHours } from './hoursTyped.ts';
import { timeFields, timesOf, timeTroubles } from './stageTimesForm.ts';
import type { Typed } from './typedMerge.ts';

/** Monday first. */
export const weekdayNames = [
  say('Monday'),
  say('Tuesday'),
  say('Wednesday'),
  say('Thursday'),
  say('Friday'),
  say('Saturday'),
  say('Sunday'),
] as const;

const days = weekdayNames.map((_, index) => index);
const hoursNeeded = say('Hours such as 09:00–13:00, 14:00–17:00; nothing where closed or away.');
const datesNeeded = say('Days such as 2026-12-25 closed; 2026-12-28 10:00–12:00.');

/** A person's fields: name, initials, one a weekday, days that differ. */
export function personFields(index: number, person: StudioPerson | null): Typed {
  const p = `person${index}`;
  return {
    [`${p}.name`]: person?.name ?? '',
    [`${p}.initials`]: person?.initials ?? '',
    ...Object.fromEntries(days.map((day) => [`${p}.day${day}`, hoursText(person?.week[day] ?? [])])),
    [`${p}.dates`]: exceptionsText(person?.exceptions ?? []),
  };
}

/** The settings as the form holds them. */
export function typedStudio(studio: StudioSettings | null): Typed {
  return {
    zone: studio?.timeZone ?? '',
    ...Object.fromEntries(days.map((day) => [`open${day}`, hoursText(studio?.open[day] ?? [])])),
    dates: exceptionsText(studio?.exceptions ?? []),
    ...Object.assign({}, ...(studio?.people ?? []).map((person, index) => personFields(index, person))),
    ...Object.assign({}, ...(studio?.times ?? []).map((time, index) => timeFields(index, time))),
  };
}

/** How many people the form has lines for. */
export function peopleTyped(typed: Typed): number {
  return Object.keys(typed).filter((field) => field.endsWith('.name')).length;
}

/** A person whose name and initials are emptied is taken out. */
function left(typed: Typed, index: number): boolean {
  return typed[`person${index}.name`]!.trim() !== '' || typed[`person${index}.initials`]!.trim() !== '';
}

/** What is wrong, by field. */
export function studioTroubles(typed: Typed): Readonly<Record<string, string | null>> {
  const troubles: Record<string, string | null> = {
    ...timeTroubles(typed),
    zone: isTimeZone(typed.zone!.trim()) ? null : say('A time zone such as Europe/London.'),
    dates: typedExceptions(typed.dates!) ? null : datesNeeded,
  };
  for (const day of days) troubles[`open${day}`] = typedHours(typed[`open${day}`]!) ? null : hoursNeeded;
  const initials = new Set<string>();
  for (let index = 0; index < peopleTyped(typed); index++) {
    if (!left(typed, index)) continue;
    const p = `person${index}`;
    const own = typed[`${p}.initials`]!.trim();
    troubles[`${p}.name`] = typed[`${p}.name`]!.trim() === '' ? say('A name or what they are here.') : null;
    troubles[`${p}.initials`] =
      own === '' || own.length > 8
        ? say('Initials, 8 letters at most.')
        : initials.has(own)
          ? say('Somebody else has these initials.')
          : null;
    initials.add(own);
    troubles[`${p}.dates`] = typedExceptions(typed[`${p}.dates`]!) ? null : datesNeeded;
    for (const day of days) {
      troubles[`${p}.day${day}`] = typedHours(typed[`${p}.day${day}`]!) ? null : hoursNeeded;
    }
  }
  return troubles;
}

/** The settings that were typed, where nothing is wrong with them; notes of days stay as they are kept. */
export function studioOf(typed: Typed, kept: StudioSettings | null): StudioDraft {
  const people = Array.from({ length: peopleTyped(typed) }, (_, index) => index)
    .filter((index) => left(typed, index))
    .map((index): StudioPerson => {
      const p = `person${index}`;
      return {
        name: typed[`${p}.name`]!.trim(),
        initials: typed[`${p}.initials`]!.trim(),
        week: days.map((day) => typedHours(typed[`${p}.day${day}`]!)!),
        exceptions: typedExceptions(typed[`${p}.dates`]!, kept?.people[index]?.exceptions)!,
      };
    });
  return {
    timeZone: typed.zone!.trim(),
    open: days.map((day) => typedHours(typed[`open${day}`]!)!),
    exceptions: typedExceptions(typed.dates!, kept?.exceptions)!,
    people,
    times: timesOf(typed),
  };
}
