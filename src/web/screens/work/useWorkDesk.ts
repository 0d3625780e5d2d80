import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { WorkDraft } from '../../../records/work.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { worksKey } from '../../client/workList.ts';
import { savedMeanwhile, saveWork, workKey } from '../../client/works.ts';
import { sameDrawing } from '../../managers/drawingDifferences.ts';
import { keepUnsaved, readUnsaved } from '../../managers/unsavedDrawing.ts';
import { type DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { drawingOf } from '../../managers/zoneDrawing.ts';
import { useKeptOnLeaving } from '../useKeptOnLeaving.ts';
import { useQuiet } from './useQuiet.ts';

/** A work on its desk: what is drawn, whether that is saved, and what came of saving. */
export interface WorkDesk {
  /** The work as it was last read or saved here. */
  readonly work: WorkEntry;
  readonly desk: ZoneDesk;
  readonly state: DeskState;
  readonly unsaved: boolean;
  /** True where an unsaved drawing of an earlier visit lies on the desk. */
  readonly broughtBack: boolean;
  readonly saving: boolean;
  readonly trouble: ShownFailure | null;
  /** The work as somebody else saved it meanwhile, until it is decided between the two. */
  readonly theirs: WorkEntry | null;
  /** Saves what is drawn; false where that was refused. */
  readonly save: () => Promise<boolean>;
  /** Saves something else about the work, put to what is kept now; what is drawn stays as it is. */
  readonly change: (step: (kept: WorkEntry) => Partial<WorkDraft>) => Promise<boolean>;
  /** Takes in a work that was saved in another way, with its drawing. */
  readonly adopt: (work: WorkEntry) => void;
  /** Saves what is drawn here over what somebody else saved. */
  readonly keepMine: () => Promise<boolean>;
  /** Puts their drawing on the desk; undoing brings back one's own. */
  readonly takeTheirs: () => void;
}

/** Puts a work on a desk of its own for as long as its screen is open; another work wants another screen (a key). */
export function useWorkDesk(entry: WorkEntry): WorkDesk {
  const queries = useQueryClient();
  const [opening] = useState(() => openDesk(entry));
  const { desk } = opening;
  const state = useSyncExternalStore(desk.listen, desk.current);
  const [base, setBase] = useState(opening.base);
  const [saving, setSaving] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [theirs, setTheirs] = useState<WorkEntry | null>(null);
  const drawing = useQuiet(state.drawing);
  const kept = useMemo(() => drawingOf(base.work), [base]);
  const unsaved = useMemo(() => !sameDrawing(drawing, kept), [drawing, kept]);

  const lay = () => {
    const last = desk.current().drawing;
    const toKeep = last.outline || !sameDrawing(last, kept) ? { version: base.version, drawing: last } : null;
    keepUnsaved(window.sessionStorage, entry.id, toKeep);
  };
  useKeptOnLeaving(lay, drawing, base);

  /** Takes a work in as it is kept; a drawing that is another becomes one step that can be undone. */
  const adopt = (work: WorkEntry) => {
    if (!sameDrawing(drawingOf(work), desk.current().drawing)) desk.replace(drawingOf(work));
    setBase({ work, version: work.version });
    if (work === entry) return;
    queries.setQueryData(workKey(entry.id), work);
    void queries.invalidateQueries({ queryKey: worksKey });
  };
  // What somebody else saved comes in by itself as long as nothing is being drawn here.
  const busy = unsaved || saving || theirs !== null || drawing !== state.drawing || drawing.outline !== null;
  const newer = entry.version > base.version && !busy;
  useEffect(() => {
    if (newer) adopt(entry);
  });

  /** Sends one save; answers the work as saved, or null. Where somebody was first, `stale` hears what is kept now. */
  const send = async (
    version: number,
    changes: Partial<WorkDraft>,
    stale: (current: WorkEntry) => void,
  ): Promise<WorkEntry | null> => {
    setSaving(true);
    setTrouble(null);
    try {
      const saved = await saveWork(entry.id, version, changes);
      queries.setQueryData(workKey(entry.id), saved);
      void queries.invalidateQueries({ queryKey: worksKey });
      return saved;
    } catch (thrown) {
      const current = savedMeanwhile(thrown);
      setTrouble(shownFailure(thrown));
      if (current) stale(current);
      return null;
    } finally {
      setSaving(false);
    }
  };
  const saveDrawing = async (version: number) => {
    const { head, rectangle, zones } = desk.current().drawing;
    const saved = await send(version, { head, rectangle, zones }, setTheirs);
    if (!saved) return false;
    setBase({ work: saved, version: saved.version });
    setTheirs(null);
    return true;
  };
  const change = async (step: (kept: WorkEntry) => Partial<WorkDraft>) => {
    let current: WorkEntry | null = null;
    const note = (kept: WorkEntry) => {
      current = kept;
    };
    let saved = await send(base.version, step(base.work), note);
    const kept = current as WorkEntry | null;
    if (!saved && kept) saved = await send(kept.version, step(kept), () => {});
    if (!saved) return false;
    const redrawn = !sameDrawing(drawingOf(saved), drawingOf(base.work));
    if (redrawn && unsaved) {
      // Theirs was drawn meanwhile, and so was mine: that is decided when the drawing is saved.
      const { head, rectangle, zones } = base.work;
      setBase({ work: { ...saved, head, rectangle, zones }, version: base.version });
      setTheirs(saved);
    } else {
      if (redrawn) desk.replace(drawingOf(saved));
      setBase({ work: saved, version: saved.version });
    }
    return true;
  };
  return {
    work: base.work,
    desk,
    state,
    unsaved,
    broughtBack: opening.broughtBack,
    saving,
    trouble,
    theirs,
    save: () => saveDrawing(base.version),
    change,
    adopt,
    keepMine: () => saveDrawing(theirs?.version ?? base.version),
    takeTheirs: () => {
      if (theirs) adopt(theirs);
      setTheirs(null);
      setTrouble(null);
    },
  };
}

function openDesk(work: WorkEntry) {
  const unsaved = readUnsaved(window.sessionStorage, work.id);
  const desk = new ZoneDesk([work.stone.widthMm, work.stone.heightMm], drawingOf(work));
  if (unsaved) desk.replace(unsaved.drawing);
  return {
    desk,
    base: { work, version: unsaved?.version ?? work.version },
    broughtBack: unsaved !== null,
  };
}
