import './DrawingView.css';
import { useMemo, useState } from 'react';
import { useSearch } from 'wouter';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { DrawingBoard } from './DrawingBoard.tsx';
import { drawingHeadline } from './drawingWords.ts';
import { RectangleForMarks } from './RectangleForMarks.tsx';
import { SavedMeanwhile } from './SavedMeanwhile.tsx';
import { StoneArrangement } from './StoneArrangement.tsx';
import { TonesRead } from './TonesRead.tsx';
import { useUndoKeys } from './useUndoKeys.ts';
import { useVerdicts } from './useVerdicts.ts';
import type { WorkDesk } from './useWorkDesk.ts';
import { WhatFollows } from './WhatFollows.tsx';
import { WorkFindings } from './WorkFindings.tsx';
import { WorkPage } from './WorkPage.tsx';
import { ZoneList } from './ZoneList.tsx';
import { ZonesFile } from './ZonesFile.tsx';

/** The drawing: zones on the stone, what they are, and what follows from where they lie. */
export function DrawingView({ desk }: { desk: WorkDesk }) {
  const { work, state } = desk;
  useUndoKeys(desk.desk);
  const verdicts = useVerdicts(state.drawing, work.stone);
  const marks = new URLSearchParams(useSearch()).get('marks');
  const [compared, setCompared] = useState(false);
  const others = useMemo(() => (compared && desk.theirs ? desk.theirs.zones : []), [compared, desk.theirs]);
  return (
    <WorkPage
      work={work}
      headline={
        marks === null
          ? drawingHeadline(
              work.title,
              state.drawing,
              verdicts,
              (work.stone.widthMm * work.stone.heightMm) / 100,
            )
          : say('Where do the four marks lie?')
      }
      board={<DrawingBoard desk={desk} faulty={verdicts.faulty} others={others} />}
      side={
        <>
          <SaveLine desk={desk} marks={marks} />
          {desk.theirs && (
            <SavedMeanwhile desk={desk} theirs={desk.theirs} compared={compared} onCompare={setCompared} />
          )}
          {marks !== null && <StoneArrangement desk={desk} forMarks />}
          <ZoneList
            desk={desk}
            verdicts={verdicts}
            askedBelow={marks === null && !desk.unsaved && work.zones.length === 0}
          />
          <TonesRead desk={desk} />
          <WorkFindings verdicts={verdicts} />
          <div>
            {marks === null && <StoneArrangement desk={desk} forMarks={false} />}
            <ZonesFile desk={desk} />
          </div>
        </>
      }
    />
  );
}

/** Saving, where something is unsaved; else what comes next. */
function SaveLine({ desk, marks }: { desk: WorkDesk; marks: string | null }) {
  const { work, state, unsaved, saving, trouble, theirs } = desk;
  const [openedAt] = useState(work.version);
  const saved = state.canUndo || state.canRedo || work.version !== openedAt ? say('Saved.') : '';
  const drawing = state.drawing.outline !== null;
  return (
    <div className="work-act first">
      {trouble && !theirs && (
        <p role="alert" className="save-trouble">
          <b>{trouble.message}</b> {trouble.remedy}
        </p>
      )}
      {marks !== null ? (
        <RectangleForMarks desk={desk} photograph={marks} />
      ) : unsaved ? (
        <Button kind="act" disabled={saving || theirs !== null || drawing} onClick={() => void desk.save()}>
          {saving ? say('Saving …') : say('Save the drawing')}
        </Button>
      ) : work.zones.length > 0 ? (
        <WhatFollows work={work} />
      ) : (
        <Button kind="act" disabled={drawing} onClick={() => beginOnBoard(desk)}>
          {say('Draw the first zone')}
        </Button>
      )}
      <p className="soft" role="status">
        {marks !== null && !saving && !drawing ? marksWords(desk, saved) : saveWords(desk, saved)}
      </p>
    </div>
  );
}

/** What is wanted of the work rectangle before the marks can be taken for its corners. */
function marksWords({ state, unsaved }: WorkDesk, saved: string): string {
  if (!state.drawing.rectangle) return say('The rectangle whose size you know, between the four marks.');
  return unsaved ? say('Type its true size and place first: what stands there is only a beginning.') : saved;
}

/** Where nothing was done yet, nothing is said of saving. */
function saveWords({ unsaved, saving, state, broughtBack, work }: WorkDesk, saved: string): string {
  if (saving) return say('Saving …');
  if (state.drawing.outline) return say('Close the outline first; Escape leaves it.');
  if (unsaved)
    return broughtBack && !state.canRedo
      ? say('Not saved yet. What was unsaved at the last visit is on the desk.')
      : say('Not saved yet; kept in this window, also when the page is loaded again.');
  return work.zones.length > 0 ? saved : say('The ground is etched all over until zones are drawn.');
}

/** Starts an outline and hands the keys to the board. */
function beginOnBoard({ desk }: WorkDesk): void {
  desk.begin();
  document.querySelector<HTMLElement>('.stone-board-area')?.focus();
}
