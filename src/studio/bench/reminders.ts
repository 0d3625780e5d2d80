import type { RackLine, Reminder } from '../../records/rack.ts';

const day = 86_400_000;
/** A stone counts as kept, no longer as resting, so long after it was gummed, ms. Our rule. */
const keptAfterMs = 3 * day;
/** When gum on a kept stone is looked at again, ms: from memory, wide. */
const lookAgainMs = [28 * day, 84 * day] as const;

/**
 * What to think of beside the next moves: how a stone keeps that lies under gum for days, and that a work which is
 * closed down can give its stone free. Nothing is asked of what nobody knows.
 * @param lines in the order of the rack, which is kept
 */
export function remindersOf(lines: readonly RackLine[], now: Date): readonly Reminder[] {
  return lines.flatMap((line) => [...storage(line, now), ...regrain(line)]);
}

function storage(line: RackLine, now: Date): readonly Reminder[] {
  const { gummed, since, wet } = line.standing;
  if (gummed !== 'yes' || wet || since === null) return [];
  const from = Date.parse(since);
  if (now.getTime() - from < keptAfterMs) return [];
  return [
    {
      ...named(line),
      about: 'storage',
      words: 'kept under gum: covered, away from damp and frost; look whether the gum is whole',
      between: [new Date(from + lookAgainMs[0]).toISOString(), new Date(from + lookAgainMs[1]).toISOString()],
      basis: 'common practice',
      note: 'covering is common practice, no source; when to look again is from memory, 4 to 12 weeks',
    },
  ];
}

function regrain(line: RackLine): readonly Reminder[] {
  if (line.standing.next?.stage !== 'regrain') return [];
  return [
    {
      ...named(line),
      about: 'regrain',
      words: 'closed down: once nothing more is to be printed from it, regrain it and the stone is free',
      between: null,
      basis: 'common practice',
      note: 'there is no latest time: a gummed stone can be kept',
    },
  ];
}

function named({ workId, stoneId, stoneName, title }: RackLine) {
  return { workId, stoneId, stoneName, title };
}
