import type { StoneEntry } from '../../../records/stoneEntry.ts';

/** The finding about a stone, as a headline. */
export function stoneFinding({ name, archived, verdict }: StoneEntry): string {
  if (archived) return `${name} is off the rack`;
  const { level, wedge } = verdict;
  if (level === 'not measured' && wedge === 'not measured') return `${name}, level not measured yet`;
  if (level === 'not measured')
    return wedge === 'wedge' ? `${name} is a wedge` : `${name} has even corners; its level is not measured`;
  if (level === 'not level')
    return wedge === 'wedge' ? `${name} is a wedge and not level` : `${name} is not level`;
  if (wedge === 'wedge') return `${name} is level, but a wedge`;
  return wedge === 'even' ? `${name} is level, its corners even` : `${name} is level`;
}

/** Kilograms as one reads them off: whole ones, one decimal below ten. */
export function kilograms(value: number): string {
  return value < 9.95 ? value.toFixed(1) : String(Math.round(value));
}
