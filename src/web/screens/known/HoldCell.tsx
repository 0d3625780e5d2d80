import type { KnownHold } from '../../../records/knownHolds.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

const verdicts: Readonly<Record<KnownHold['verdict'], string>> = {
  holds: say('holds'),
  'holds-here': say('held on one stone'),
  fails: say('does not hold'),
  'fails-here': say('did not hold on one stone'),
  open: say('open'),
};

/** One medium under one etch: what was found, how often, and how far that may be off. */
export function HoldCell({ etch, hold }: { etch: string; hold: KnownHold | null }) {
  if (!hold)
    return (
      <li className="known-cell">
        <h3>{told(etch)}</h3>
        <p className="soft">{say('not tried here')}</p>
      </li>
    );
  const { share, certainty, verdict, counts, testStones, works, pooled, pooledLow, pooledHigh } = hold;
  const lost = counts.lost + counts.weak;
  return (
    <li className="known-cell">
      <h3>{told(etch)}</h3>
      <p className="known-verdict">{verdicts[verdict]}</p>
      <div className="known-line" aria-hidden="true">
        <i
          className={`known-range ${certainty}`}
          style={{ left: `${100 * share.low}%`, width: `${Math.max(1, 100 * (share.high - share.low))}%` }}
        />
      </div>
      <p className="known-figure">
        {percent(share.low)}–{percent(share.high)} % <span className="soft">{say('hold')}</span>
      </p>
      <p className="soft">
        {say(
          '{unitsHeld} of {units} {unit, select, stone {{units, plural, one {stone} other {stones}}} strip {{units, plural, one {strip} other {strips}}} square {{units, plural, one {square} other {squares}}} other {{units, plural, one {patch} other {patches}}}} held throughout; {patches} {patches, plural, one {place} other {places}}{lost}{filled}',
          {
            unitsHeld: share.unitsHeld,
            units: share.units,
            unit: share.unit,
            patches: share.patches,
            lost: lost > 0 && say(', {lost} lost or weak', { lost }),
            filled: counts.filled > 0 && say(', {filled} filled', { filled: counts.filled }),
          },
        )}
      </p>
      <p className="soft">{sources(testStones, works)}</p>
      <p className="soft">
        {say('Reckoned together with the other etches of this medium: {share} % ({low}–{high} %)', {
          share: percent(pooled),
          low: percent(pooledLow),
          high: percent(pooledHigh),
        })}
      </p>
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

function percent(share: number): string {
  return fixed(100 * share, 0);
}
