import './StandingFold.css';
import './Fold.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Standing } from '../../records/bench.ts';
import { readWaits, waitsKey } from '../client/rack.ts';
import { bandSpan, bandWords, basisWords, rangeWords, verdictWords } from '../managers/standingWords.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';

/**
 * How long a stone may wait by practice, with its basis, and how stones printed here that were left so long: kept folded,
 * and read once somebody wants it.
 */
export function StandingFold({ standing }: { standing: Standing }) {
  const [opened, setOpened] = useState(false);
  return (
    <details className="fold" onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary>{say('How long it may wait')}</summary>
      <div className="fold-inside">{opened && <StandingDetail standing={standing} />}</div>
    </details>
  );
}

function StandingDetail({ standing }: { standing: Standing }) {
  const { range } = standing;
  return (
    <dl className="standing-detail">
      {standing.since === null && (
        <div>
          <dt>{say('Since when')}</dt>
          <dd>{say('not known: nobody logged it')}</dd>
        </div>
      )}
      <div>
        <dt>{say('By practice')}</dt>
        {range ? (
          <>
            <dd>{rangeWords(range).join('; ')}</dd>
            <dd className="soft">
              {told(range.note)} ({basisWords[range.basis]})
            </dd>
          </>
        ) : (
          <dd>
            {standing.verdict === 'now'
              ? say('nothing waits: work on it is under way')
              : say('no time is known that it must or may not wait')}
          </dd>
        )}
      </div>
      {standing.wait && <OwnRecord standing={standing} />}
    </dl>
  );
}

function OwnRecord({ standing: { wait, verdict } }: { standing: Standing }) {
  const found = useQuery({ queryKey: waitsKey, queryFn: readWaits });
  if (!found.data) return null;
  const record = found.data.find((one) => one.wait === wait);
  return (
    <div>
      <dt>{say('In this room')}</dt>
      {record?.bands.map((band) => (
        <dd key={band.verdict}>
          <b>
            {say('left {bandSpan} ({verdictWords}{verdict})', {
              bandSpan: bandSpan(band),
              verdictWords: verdictWords[band.verdict],
              verdict: band.verdict === verdict && say(', as it stands'),
            })}
          </b>
          : {bandWords(band)}
        </dd>
      ))}
      {(record?.bands.length ?? 0) === 0 && (
        <dd>
          {say(
            'unknown: no print is measured yet of a stone that waited so. Attach the print’s photograph to its work and compare it.',
          )}
        </dd>
      )}
      {(record?.unmeasured ?? 0) > 0 && (
        <dd className="soft">
          {say(
            '{unmeasured} more {unmeasured, plural, one {wait} other {waits}} with no measured print after',
            { unmeasured: record!.unmeasured },
          )}
        </dd>
      )}
    </div>
  );
}
