import type { KnownHold } from '../../../records/knownHolds.ts';

const verdicts: Readonly<Record<KnownHold['verdict'], string>> = {
  holds: 'holds',
  'holds-here': 'held on one stone',
  fails: 'does not hold',
  'fails-here': 'did not hold on one stone',
  open: 'open',
};

/** One medium under one etch: what was found, how often, and how far that may be off. */
export function HoldCell({ etch, hold }: { etch: string; hold: KnownHold | null }) {
  if (!hold)
    return (
      <li className="known-cell">
        <h3>{etch}</h3>
        <p className="soft">not tried here</p>
      </li>
    );
  const { share, certainty, verdict, counts, testStones, works, pooled, pooledLow, pooledHigh } = hold;
  const units = `${share.unit}${share.units === 1 ? '' : 's'}`;
  const lost = counts.lost + counts.weak;
  return (
    <li className="known-cell">
      <h3>{etch}</h3>
      <p className="known-verdict">{verdicts[verdict]}</p>
      <svg className="known-bar" viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
        <defs>
          <pattern
            id="known-some"
            width="3"
            height="3"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="1.1" height="3" fill="var(--ink)" />
          </pattern>
          <pattern
            id="known-little"
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="0.8" height="3" fill="var(--ink)" />
          </pattern>
        </defs>
        <rect className="known-range" x="0" y="1" width="100" height="12" />
        <rect
          className="known-interval"
          x={100 * share.low}
          y="1"
          width={Math.max(1, 100 * (share.high - share.low))}
          height="12"
          fill={certainty === 'sure' ? 'var(--ink)' : `url(#known-${certainty})`}
        />
      </svg>
      <p className="known-figure">
        {percent(share.low)}–{percent(share.high)} % <span className="soft">hold</span>
      </p>
      <p className="soft">
        {share.unitsHeld} of {share.units} {units} held throughout; {share.patches}{' '}
        {share.patches === 1 ? 'place' : 'places'}
        {lost > 0 && `, ${lost} lost or weak`}
        {counts.filled > 0 && `, ${counts.filled} filled`}
      </p>
      <p className="soft">{sources(testStones, works)}</p>
      <p className="soft">
        pooled with its medium {percent(pooled)} % ({percent(pooledLow)}–{percent(pooledHigh)} %)
      </p>
    </li>
  );
}

function sources(testStones: number, works: number): string {
  const parts = [
    ...(testStones > 0 ? [`${testStones} by test stones`] : []),
    ...(works > 0 ? [`${works} by works`] : []),
  ];
  return parts.join(', ');
}

function percent(share: number): string {
  return (100 * share).toFixed(0);
}
