import '../work/WorkPage.css';
import './Areas.css';
import { useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { Link, useLocation } from 'wouter';
import { type SeriesTone, seriesTones } from '../../../records/proofSeries.ts';
import type { KeptSeriesSettings } from '../../../records/workSeries.ts';
import { unionArea } from '../../../science/geometry/polygonArea.ts';
import { saveSeriesSettings } from '../../client/pulls.ts';
import type { LinkedView } from '../../managers/linkedView.ts';
import { toScreenPx } from '../../managers/linkedView.ts';
import { faultOf } from '../../managers/outlineFaults.ts';
import { areaDrawing, areaSign, areasOf, newArea } from '../../managers/proofs/toneAreaDrawing.ts';
import { keepUnsaved, readUnsaved } from '../../managers/unsavedDrawing.ts';
import { ZoneDesk } from '../../managers/zoneDesk.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { stoneTint } from '../../parts/stoneTint.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { useKeptOnLeaving } from '../useKeptOnLeaving.ts';
import { useSaving } from '../useSaving.ts';
import { DrawingBoard } from '../work/DrawingBoard.tsx';
import { bestPhotograph } from '../work/PhotographUnder.tsx';
import { useQuiet } from '../work/useQuiet.ts';
import { useUndoKeys } from '../work/useUndoKeys.ts';
import { AreaList } from './AreaList.tsx';
import { ProofsStamp } from './ProofsStamp.tsx';
import { type ProofsPageParts, useProofsChanged } from './useProofs.ts';

/** Lights, middles and darks of a work, drawn by hand over its stone: once, for all its pulls. */
export function AreasPage({ work, proofs: { settings, pulls } }: ProofsPageParts) {
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<KeptSeriesSettings>();
  const tone = useRef<SeriesTone>('lights');
  const [{ desk, begun, base }] = useState(() => {
    const laid = areaDrawing(settings.areas, work);
    const stoneMm = [work.stone.widthMm, work.stone.heightMm] as const;
    const opened = new ZoneDesk(stoneMm, laid, () => newArea(tone.current));
    const unsaved = readUnsaved(window.sessionStorage, shelfName(work.id));
    if (unsaved) opened.replace(unsaved.drawing);
    return {
      desk: opened,
      begun: laid,
      base: { saved: false, broughtBack: unsaved !== null, version: unsaved?.version ?? settings.version },
    };
  });
  const state = useSyncExternalStore(desk.listen, desk.current);
  useUndoKeys(desk);
  const { drawing } = state;
  const faulty = useMemo(
    () => new Set(drawing.zones.filter(({ polygonMm }) => faultOf(polygonMm) !== null).map(({ id }) => id)),
    [drawing.zones],
  );
  // On the board the stone's own photographs serve as well as the work's.
  const onBoard = useMemo(
    () => ({ ...work, photographs: [...work.stone.photographs, ...work.photographs] }),
    [work],
  );
  const open = drawing.outline !== null;
  const moved = drawing.zones !== begun.zones;
  const lay = () => {
    const toKeep = (moved || open) && !base.saved ? { version: base.version, drawing } : null;
    keepUnsaved(window.sessionStorage, shelfName(work.id), toKeep);
  };
  useKeptOnLeaving(lay, useQuiet(drawing), begun);
  const at = `/works/${work.id}/proofs`;
  const begin = (next: SeriesTone) => {
    tone.current = next;
    desk.begin();
    const board = document.querySelector<HTMLElement>('.stone-board-area');
    board?.focus({ preventScroll: true });
    // The list above or below folds first; on a phone the stone may be out of sight.
    requestAnimationFrame(() => board?.scrollIntoView({ block: 'nearest' }));
  };
  const save = async () => {
    const areas = areasOf(drawing, work.zones);
    const kept = await saving.send(() => saveSeriesSettings(work.id, settings.version, { areas }));
    base.saved = kept !== null;
    await changed();
    if (kept) go(at);
  };
  const lacking = seriesTones.filter((one) => areasOf(drawing, work.zones)[one].polygonsMm.length === 0);
  return (
    <div className="work-page" style={stoneTint(work.stone.colour)}>
      <div className="work-head">
        <PageHead
          stamp={<ProofsStamp work={work} here={say('Areas by hand')} />}
          headline={say('Draw what stands for lights, middles, darks')}
        />
      </div>
      <div className="work-board">
        <div>
          <DrawingBoard
            desk={{ desk, state, work: onBoard }}
            faulty={faulty}
            thing="area"
            letterOf={(zone) => areaSign(drawing.zones, zone)}
            beneath={(view) => <ZonesBeneath work={work} view={view} />}
          />
        </div>
      </div>
      <div className="work-side">
        <p className="soft">
          {say(
            'Even places of one tone, away from edges, a few square centimetres each: each pull is read there.',
          )}
          {bestPhotograph(onBoard) === null && (
            <>
              {' '}
              {sayRich(
                'It is easiest over <link>a photograph of the drawn stone</link> with its marks; without one, the zones show as broken lines.',
                { link: (words) => <Link href={`/works/${work.id}/photographs`}>{words}</Link> },
              )}
            </>
          )}
        </p>
        <AreaList
          desk={desk}
          state={state}
          work={work}
          drawn={tone.current}
          faulty={faulty}
          areaCm2={(outline) => unionArea([outline]) / 100}
          onBegin={begin}
        />
        <div className="work-act">
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <Button
            kind="act"
            disabled={saving.pending || open || faulty.size > 0 || !moved}
            onClick={() => void save()}
          >
            {saving.pending ? say('Saving …') : say('Save the areas')}
          </Button>
          <p className="soft" role="status">
            {open
              ? say('Close the outline first; Escape leaves it.')
              : faulty.size > 0
                ? say('One outline crosses itself or encloses nothing: move a point, or take it away.')
                : savedWords(moved, pulls.length, lacking)}
            {moved && !open && broughtBackWords(base, settings.version)}
          </p>
        </div>
      </div>
    </div>
  );
}

function savedWords(moved: boolean, pulls: number, lacking: readonly SeriesTone[]): string {
  const lacks =
    lacking.length > 0 ? say('Nothing stands for {lacking}. ', { lacking: lacking.join(' or ') }) : '';
  if (!moved) return say('{lacks}As saved.', { lacks });
  if (pulls === 0) return lacks || say('Not saved yet.');
  return say(
    '{lacks}{pulls, plural, one {The one pull} other {All {pulls} pulls}} will be read again, so that all are read alike.',
    { lacks, pulls },
  );
}

/** What to know of areas that were not saved at an earlier visit. */
function broughtBackWords(base: { broughtBack: boolean; version: number }, keptNow: number): string {
  if (!base.broughtBack) return '';
  return base.version === keptNow
    ? say(' What was unsaved at the last visit is here again.')
    : say(
        ' What was unsaved at the last visit is here again; somebody saved others since, and saving these replaces them.',
      );
}

/** Where unsaved areas of a work lie; its own drawing lies under the work itself. */
function shelfName(work: string): string {
  return `areas-${work}`;
}

/** The zones of the work, to be drawn over. */
function ZonesBeneath({ work, view }: { work: ProofsPageParts['work']; view: LinkedView }) {
  return (
    <g className="zones-beneath">
      {work.zones.map(({ id, polygonMm }) => (
        <polygon key={id} points={polygonMm.map((place) => toScreenPx(view, place).join(',')).join(' ')} />
      ))}
    </g>
  );
}
