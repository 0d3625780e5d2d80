import { useState } from 'react';
import type { ZoneTones } from '../../../records/zoneTones.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { readZoneTones } from '../../client/zoneTones.ts';
import { withTones } from '../../managers/zoneDrawing.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Waiting } from '../../parts/Waiting.tsx';
import { say } from '../../words/say.ts';
import { toldOr } from '../../words/told.ts';
import { bestPhotograph } from './PhotographUnder.tsx';
import type { WorkDesk } from './useWorkDesk.ts';

/** The tones of the zones as a photograph shows them, to be taken or left. */
export function TonesRead({ desk }: { desk: WorkDesk }) {
  const { work, state, unsaved } = desk;
  const [read, setRead] = useState<ZoneTones | null>(null);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [asking, setAsking] = useState<AbortController | null>(null);
  const photograph = bestPhotograph(work);
  if (!photograph || work.zones.length === 0) return null;
  const ask = async () => {
    const called = new AbortController();
    setAsking(called);
    setTrouble(null);
    try {
      setRead(await readZoneTones(work.id, photograph.photograph, called.signal));
    } catch (thrown) {
      if (!called.signal.aborted) setTrouble(shownFailure(thrown));
    } finally {
      setAsking(null);
    }
  };
  const take = () => {
    if (read) desk.desk.replace(withTones(state.drawing, read.zones));
    setRead(null);
  };
  const nameOf = (id: string) => work.zones.find((zone) => zone.id === id)?.name ?? id;
  return (
    <section className="tones-read" aria-label={say('Tones from the photograph')}>
      {!read && asking && <Waiting words={say('Reading the tones …')} onStop={() => asking.abort()} />}
      {!read && !asking && (
        <Button disabled={unsaved} onClick={() => void ask()}>
          {say('Read the tones from the photograph')}
        </Button>
      )}
      {!read && unsaved && <p className="soft">{say('They are read inside the saved zones: save first.')}</p>}
      {trouble && <FailureNotice failure={trouble} />}
      {read && (
        <>
          <h3>{say('Tones on the photograph')}</h3>
          <ul>
            {read.zones.map(({ zone, tone, mean, why }) => (
              <li key={zone}>
                <span>{nameOf(zone)}</span>{' '}
                {tone ? (
                  <b>
                    {say('{percent} %{mean}, darkest {percent2}', {
                      percent: percent(tone.mean),
                      mean:
                        mean &&
                        say(' ({percent} to {percent2})', {
                          percent: percent(mean.low),
                          percent2: percent(mean.high),
                        }),
                      percent2: percent(tone.darkest),
                    })}{' '}
                    %
                  </b>
                ) : (
                  <span className="soft">{toldOr(why)}</span>
                )}
              </li>
            ))}
          </ul>
          {read.warnings.map((words) => (
            <Notice key={words} kind="caution" title="">
              {words}
            </Notice>
          ))}
          <div>
            <Button disabled={read.zones.every(({ tone }) => tone === null)} onClick={take}>
              {say('Take these tones')}
            </Button>
            {read.zones.every(({ tone }) => tone === null) && (
              <p className="soft">{say('No zone has a tone on this photograph.')}</p>
            )}
            <Button kind="quiet" onClick={() => setRead(null)}>
              {say('Leave them')}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

function percent(share: number): number {
  return Math.round(share * 100);
}
