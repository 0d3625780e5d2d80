import type { KnownHold } from '../../../records/knownHolds.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { percent } from './percent.ts';

const verdicts: Readonly<Record<KnownHold['verdict'], string>> = {
  holds: say('holds'),
  'holds-here': say('held on one stone'),
  fails: say('does not hold'),
  'fails-here': say('did not hold on one stone'),
  open: say('not sure yet'),
};

/** One medium under one etch: what was found, how often, and how far that may be off. */
export function HoldCell({ etch, hold }: { etch: string; hold: KnownHold }) {
  const { share, certainty, verdict, counts, testStones, works } = hold;
  const lost = counts.lost + counts.weak;
  return (
    <li className="known-cell">
      <h3>{told(etch)}</h3>
      <p className="known-count">
        {say(
          '{unitsHeld} of {units} {unit, select, stone {{units, plural, one {stone} other {stones}}} strip {{units, plural, one {strip} other {strips}}} square {{units, plural, one {square} other {squares}}} other {{units, plural, one {patch} other {patches}}}} held',
          { unitsHeld: share.unitsHeld, units: share.units, unit: share.unit },
        )}
      </p>
      <div className="known-line" aria-hidden="true">
        <i
          className={`known-range ${certainty}`}
          style={{ left: `${100 * share.low}%`, width: `${Math.max(1, 100 * (share.high - share.low))}%` }}
        />
      </div>
      <p>
        {sayRich('<b>{low}–{high} %</b> may hold: {verdict}', {
          low: percent(share.low),
          high: percent(share.high),
          verdict: verdicts[verdict],
          b: (words) => <b className="known-figure">{words}</b>,
        })}
      </p>
      <p className="soft">
        {say('{patches} {patches, plural, one {place} other {places}}{lost}{filled}', {
          patches: share.patches,
          lost: lost > 0 && say(', {lost} lost or weak', { lost }),
          filled: counts.filled > 0 && say(', {filled} filled in', { filled: counts.filled }),
        })}
      </p>
      <p className="soft">{sources(testStones, works)}</p>
    </li>
  );
}

function sources(testStones: number, works: number): string {
  const parts = [
    ...(testStones > 0
      ? [
          say('{testStones, plural, one {on one test stone} other {on {testStones} test stones}}', {
            testStones,
          }),
        ]
      : []),
    ...(works > 0
      ? [say('{works, plural, one {on one work’s stone} other {on the stones of {works} works}}', { works })]
      : []),
  ];
  return parts.join(', ');
}
