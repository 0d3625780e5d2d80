import './ZoneList.css';
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import type { WorkZone } from '../../../records/work.ts';
import { groundLetter, zoneLetter } from '../../../studio/etch/zoneLetters.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { toldOr } from '../../words/told.ts';
import { areaWords } from './drawingWords.ts';
import { useMedia } from './useMedia.ts';
import type { LiveVerdicts } from './useVerdicts.ts';
import type { WorkDesk } from './useWorkDesk.ts';
import { ZoneFields } from './ZoneFields.tsx';

/** The zones with their areas; the one in hand unfolds to say what it is. */
export function ZoneList({
  desk: { desk, state, work },
  verdicts,
  askedBelow,
}: {
  desk: WorkDesk;
  verdicts: LiveVerdicts;
  /** Whether the page asks for the first zone already. */
  askedBelow: boolean;
}) {
  const media = useMedia();
  const { drawing, picked } = state;
  const fields = useRef<HTMLDivElement>(null);
  const count = useRef(drawing.zones.length);
  // A zone just closed wants a name and a medium next.
  useEffect(() => {
    const closed = drawing.zones.length === count.current + 1 && drawing.zones.at(-1)?.id === picked;
    count.current = drawing.zones.length;
    if (closed) fields.current?.querySelector('input')?.select();
  }, [drawing.zones, picked]);
  const rows = useRef<HTMLUListElement>(null);
  // A zone taken in hand on the stone shows its words; where these lie below the stone, the stone stays in sight.
  useEffect(() => {
    if (picked === null || !window.matchMedia('(min-width: 901px)').matches) return;
    rows.current?.querySelector('.picked')?.scrollIntoView({ block: 'nearest' });
  }, [picked]);
  const areaOf = (id: string) => verdicts.areasCm2.find(({ zone }) => zone === id)?.areaCm2 ?? null;
  const begin = () => {
    desk.begin();
    document.querySelector<HTMLElement>('.stone-board-area')?.focus();
  };
  return (
    <section aria-labelledby="zones-head">
      <div className="zone-list-head">
        <h2 id="zones-head" className="big">
          {say('Zones')}
        </h2>
        {drawing.outline ? (
          <div>
            <Button kind="quiet" onClick={() => desk.leave()}>
              {say('Leave the outline')}
            </Button>
            <Button disabled={drawing.outline.length < 3} onClick={() => desk.close()}>
              {say('Close it')}
            </Button>
            {drawing.outline.length < 3 && <p className="soft">{say('It closes from three points on.')}</p>}
          </div>
        ) : (
          !askedBelow && <Button onClick={begin}>{say('Draw a zone')}</Button>
        )}
      </div>
      {drawing.zones.length === 0 && (
        <p className="zone-list-empty">
          {say(
            'Draw once round each part that was made with one medium, such as a wash sky or a crayon bank; what should stay bare may have a zone too.',
          )}
          {work.photographs.length === 0 && (
            <>
              {' '}
              {sayRich('It is easiest over <link>a photograph of the drawn stone</link>.', {
                link: (words) => <Link href={`/works/${work.id}/photographs`}>{words}</Link>,
              })}
            </>
          )}
        </p>
      )}
      <ul ref={rows} className="zone-list">
        {drawing.zones.map((zone, index) => (
          <li key={zone.id} className={zone.id === picked ? 'picked' : undefined}>
            <button
              type="button"
              aria-expanded={zone.id === picked}
              onClick={() => desk.pick(zone.id === picked ? null : zone.id)}
            >
              <b className="big">{zoneLetter(index)}</b>
              <span>
                {zone.name}
                <span className="soft zone-list-medium">{zoneWords(zone, media.nameOf(zone.medium))}</span>
              </span>
              <span className="zone-list-area">
                {areaOf(zone.id) === null ? say('no area') : areaWords(areaOf(zone.id)!)}
              </span>
            </button>
            {zone.id === picked && (
              <div ref={fields}>
                <ZoneFields desk={desk} state={state} zone={zone} media={media} />
              </div>
            )}
          </li>
        ))}
        <li className="zone-list-ground">
          <b className="big">{groundLetter}</b>
          <span>
            {sayRich('Ground<span>the stone outside all zones, always gummed</span>', {
              span: (words) => <span className="soft zone-list-medium">{words}</span>,
            })}
          </span>
          <span className="zone-list-area">{areaWords(verdicts.groundCm2)}</span>
        </li>
      </ul>
    </section>
  );
}

/** What a zone is, in a line. */
function zoneWords({ deposit, intention }: WorkZone, medium: string | null): string {
  const meant = {
    guide: say('guide line'),
    'stop-out': say('stopped out'),
    'scraped-white': say('scraped white'),
  };
  return [
    medium ?? say('medium not said yet'),
    deposit === 'wash' ? say('light to dark') : toldOr(deposit),
    intention && intention !== 'drawn' ? meant[intention] : null,
  ]
    .filter(Boolean)
    .join(', ');
}
