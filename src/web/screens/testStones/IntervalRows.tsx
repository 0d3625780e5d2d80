import { say } from '../../words/say.ts';

/** Values with their intervals, one under the other on one scale; where no interval is known only the value stands. */
export function IntervalRows({
  rows,
  from,
  to,
  mark,
}: {
  rows: readonly {
    readonly label: string;
    readonly value: number;
    readonly low: number | null;
    readonly high: number | null;
  }[];
  from: number;
  to: number;
  /** Where a line stands across all of them. */
  mark: number | null;
}) {
  const at = (value: number) => (200 * (Math.min(Math.max(value, from), to) - from)) / (to - from);
  return (
    <dl className="interval-rows">
      {rows.map(({ label, value, low, high }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{wordsOf(value, low, high)}</dd>
          <dd className="interval-line">
            <svg viewBox="-4 0 208 22" preserveAspectRatio="none" aria-hidden="true">
              <path d="M0 11H200" stroke="var(--rule)" />
              {mark !== null && <path d={`M${at(mark)} 1V21`} stroke="var(--edge)" strokeDasharray="3 3" />}
              {low !== null && high !== null && (
                <path d={`M${at(low)} 11H${at(high)}`} stroke="var(--ink)" strokeWidth="4" />
              )}
              <path d={`M${at(value)} 3V19`} stroke="var(--ink)" strokeWidth="3" />
            </svg>
          </dd>
        </div>
      ))}
    </dl>
  );
}

function wordsOf(value: number, low: number | null, high: number | null): string {
  const percent = (share: number) => String(Math.round(share * 100)).replace('-', '−');
  return low === null || high === null
    ? say('{percent} %, how far it may be off is not known', { percent: percent(value) })
    : say('{percent} % ({percent2} to {percent3})', {
        percent: percent(value),
        percent2: percent(low),
        percent3: percent(high),
      });
}
