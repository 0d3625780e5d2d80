import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';

/** The finding about a stone, as a headline. */
export function stoneFinding({ name, putBy, verdict }: StoneEntry): string {
  if (putBy) return say('{name} is off the rack', { name });
  const { level, wedge } = verdict;
  if (level === 'not measured' && wedge === 'not measured')
    return say('{name}, level not measured yet', { name });
  if (level === 'not measured')
    return wedge === 'wedge'
      ? say('{name}: level not measured yet, corners uneven', { name })
      : say('{name} has even corners; its level is not measured', { name });
  if (level === 'not level')
    return wedge === 'wedge'
      ? say('{name} is a wedge and not level', { name })
      : say('{name} is not level', { name });
  if (wedge === 'wedge') return say('{name} is level, but a wedge', { name });
  return wedge === 'even'
    ? say('{name} is level, its corners even', { name })
    : say('{name} is level', { name });
}

/** Kilograms as one reads them off: whole ones, one decimal below ten. */
export function kilograms(value: number): string {
  return value < 9.95 ? fixed(value, 1) : String(Math.round(value));
}
