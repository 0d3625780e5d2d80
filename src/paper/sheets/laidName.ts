import type { LaidRow } from '../../studio/etch/laidRows.ts';
import { asWritten } from '../../words/asWritten.ts';

/** What a place of a plan is called on a sheet: the ground by the trade's word, a zone by its own; a part says how strong. */
export function laidName({ row, name }: LaidRow): string {
  if (row.id === 'ground') return name;
  const strength = `, ${row.strength}`;
  // The id of a part ends with its strength.
  return row.id.endsWith(`:${row.strength}`) && name.endsWith(strength)
    ? `${asWritten(name.slice(0, -strength.length))}${strength}`
    : asWritten(name);
}

/** What a plan's sheets are called by: the work and its stone, `Low Water, stone S-01`, as people named both. */
export function planTitle(title: string): string {
  const [, work, stone] = /^(.*), stone (.*?)$/s.exec(title) ?? [];
  return work === undefined ? asWritten(title) : `${asWritten(work)}, stone ${asWritten(stone!)}`;
}
