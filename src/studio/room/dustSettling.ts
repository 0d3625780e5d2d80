import type { RoomAnswer } from '../../records/roomAnswer.ts';
import { fallMinutes } from '../../science/air/settling.ts';
import { localRules } from './localRules.ts';

/** Stirred air keeps a share e^(−t/T) after t, T the time of falling: 1 of 100 is left after ln 100 of them. */
const stirred = Math.log(100);

/**
 * How long dust may hang: the time a sphere falls so far in still air, and until a stirred room has let go 99 of 100.
 * @param micron diameter, 0.2 to 1000. @param density of a grain, g/cm³, above 0. @param metres above 0.
 */
export function dustSettling(micron: number, density: number, metres: number): RoomAnswer {
  const value = fallMinutes(micron, density, metres);
  return {
    kind: 'settle',
    value,
    unit: 'min',
    range: {
      low: value,
      high: value * stirred,
      reason: 'from still air, which no room has, to stirred air until 1 grain of 100 is left',
    },
    formula:
      't = metres / speed; speed = density · diameter² · g · slip / (18 · viscosity), its drag by Cd = 24/Re (1 + 0.15 Re^0.687); stirred: ln 100 · t',
    source:
      'Hinds 1999, Aerosol Technology, 2nd ed., eq. 3.20 and 3.21 (settling, slip); Schiller & Naumann 1935 (drag); stirred settling from memory',
    words: [
      'For one size of round grains: dust holds finer ones too, and they hang far longer.',
      'What has settled lifts again when somebody walks, sweeps or fans: wipe wet, never dry, and never with compressed air.',
      'Rosin can cause asthma also when it is cold, and its dust burns: no flame, no spark, no more of it than the stone needs.',
      localRules.air,
    ],
  };
}
