import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { areaSign, asTone, handDrawn, toneOfArea } from '../../managers/proofs/toneAreaDrawing.ts';
import type { DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { Button } from '../../parts/Button.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { areaWords } from '../work/drawingWords.ts';
import { PointFields } from '../work/PointFields.tsx';

const words: Readonly<Record<SeriesTone, string>> = {
  lights: say('Lights'),
  middles: say('Middles'),
  darks: say('Darks'),
};

/** The areas under their tones; the one in hand unfolds to be given to another tone, moved point by point, or taken away. */
export function AreaList({
  desk,
  state: deskState,
  work,
  drawn,
  faulty,
  areaCm2,
  onBegin,
}: {
  desk: ZoneDesk;
  state: DeskState;
  work: WorkEntry;
  /** The tone that the open outline is for. */
  drawn: SeriesTone;
  faulty: ReadonlySet<string>;
  areaCm2: (outline: readonly Point[]) => number;
  /** Starts an outline for a tone. */
  onBegin: (tone: SeriesTone) => void;
}) {
  const { drawing, picked } = deskState;
  if (drawing.outline)
    return (
      <div className="area-outline">
        <h2>{say('{words}: a new outline', { words: words[drawn] })}</h2>
        <Button kind="quiet" onClick={() => desk.leave()}>
          {say('Leave the outline')}
        </Button>
        <Button disabled={drawing.outline.length < 3} onClick={() => desk.close()}>
          {drawing.outline.length < 3 ? say('Close it: from three points on') : say('Close it')}
        </Button>
      </div>
    );
  const zoneOf = (outline: readonly Point[]) =>
    work.zones.find(
      (zone) => handDrawn({ origin: 'chosen', zones: [], polygonsMm: [outline] }, [zone]).length === 0,
    );
  return (
    <>
      {seriesTones.map((tone) => {
        const own = drawing.zones.filter((zone) => toneOfArea(zone) === tone);
        return (
          <section key={tone} aria-labelledby={`${tone}-areas`} className="area-tone">
            <div className="area-tone-head">
              <h2 id={`${tone}-areas`}>{words[tone]}</h2>
              <Button onClick={() => onBegin(tone)}>{say('Draw {tone}', { tone })}</Button>
            </div>
            {own.length === 0 && <p className="soft">{say('Nothing stands for them yet.')}</p>}
            <ul>
              {own.map((area) => (
                <li key={area.id} className={area.id === picked ? 'picked' : undefined}>
                  <button
                    type="button"
                    aria-expanded={area.id === picked}
                    onClick={() => desk.pick(area.id === picked ? null : area.id)}
                  >
                    <b className="big">{areaSign(drawing.zones, area)}</b>
                    <span>
                      {faulty.has(area.id)
                        ? say('crosses itself or encloses nothing')
                        : (zoneOf(area.polygonMm)?.name ?? say('drawn by hand'))}
                    </span>
                    <span>{faulty.has(area.id) ? say('no area') : areaWords(areaCm2(area.polygonMm))}</span>
                  </button>
                  {area.id === picked && (
                    <div className="area-fields">
                      <Picks<SeriesTone>
                        label={say('It stands for')}
                        value={tone}
                        options={seriesTones.map((one) => [one, told(one)] as const)}
                        onPick={(next) => desk.change(area.id, asTone(next))}
                      />
                      <PointFields desk={desk} state={deskState} outline={area.polygonMm} />
                      <Button kind="quiet" onClick={() => desk.remove(area.id)}>
                        {say('Take {areaSign} away', { areaSign: areaSign(drawing.zones, area) })}
                      </Button>
                    </div>
                  )}
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </>
  );
}
