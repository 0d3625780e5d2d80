import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { PatchGrid, StonePatch, TestFactor, TestStone } from '../../../records/testStone.ts';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { faultOf } from '../../managers/outlineFaults.ts';
import {
  type DrawnAs,
  freePatchId,
  newPatchZone,
  patchDrawing,
  patchesOf,
} from '../../managers/testStones/patchDrawing.ts';
import {
  keepPatches,
  type PatchesSaid,
  readPatches,
  saidOf,
  sameSaid,
} from '../../managers/testStones/unsavedPatches.ts';
import { type DeskState, ZoneDesk } from '../../managers/zoneDesk.ts';
import { useKeptOnLeaving } from '../useKeptOnLeaving.ts';
import { useQuiet } from '../work/useQuiet.ts';

/** The patches of a test stone on their desk: where they lie, what each got, and whether that is saved. */
export interface PatchDesk {
  readonly desk: ZoneDesk;
  readonly state: DeskState;
  readonly patches: readonly StonePatch[];
  readonly factors: readonly TestFactor[];
  readonly grid: PatchGrid | null;
  /** Ids of patches whose outline crosses itself or encloses nothing. */
  readonly faulty: ReadonlySet<string>;
  readonly unsaved: boolean;
  /** True where unsaved patches of an earlier visit lie on the desk. */
  readonly broughtBack: boolean;
  /** True where somebody else saved other patches meanwhile, until it is decided between the two. */
  readonly savedMeanwhile: boolean;
  /** What a save would take. */
  readonly said: PatchesSaid;
  /** Takes in what came of saving `sent`; what was said since stays unsaved. */
  readonly saved: (stone: TestStone, sent: PatchesSaid) => void;
  /** Takes what somebody else saved; undoing brings one's own outlines back. */
  readonly takeTheirs: () => void;
  /** Goes on from one's own patches over what somebody else saved. */
  readonly keepMine: () => void;
  /** Says what patches are and got; where they lie stays. */
  readonly say: (patches: readonly StonePatch[]) => void;
  readonly vary: (factors: readonly TestFactor[]) => void;
  /** Lays all squares anew; what was drawn beside them stays. */
  readonly lay: (grid: PatchGrid) => void;
  /** Starts an outline of a kind. */
  readonly begin: (kind: DrawnAs) => void;
  /** Has a patch go by another id. */
  readonly rename: (id: string, next: string) => void;
}

/** Puts the patches of a test stone on a desk for as long as their page is open; another stone wants a key of its own. */
export function usePatchDesk(stone: TestStone): PatchDesk {
  const [opening] = useState(() => openDesk(stone));
  const { desk, kind } = opening;
  const state = useSyncExternalStore(desk.listen, desk.current);
  const [base, setBase] = useState(opening.base);
  const [told, setTold] = useState<ReadonlyMap<string, StonePatch>>(opening.told);
  const [factors, setFactors] = useState(opening.said.factors);
  const [grid, setGrid] = useState(opening.said.grid);
  const { zones, outline } = state.drawing;
  const patches = useMemo(() => patchesOf(zones, told), [zones, told]);
  const saidNow = useMemo(() => ({ patches, factors, grid }), [patches, factors, grid]);
  const faulty = useMemo(
    () => new Set(zones.filter(({ polygonMm }) => faultOf(polygonMm) !== null).map(({ id }) => id)),
    [zones],
  );
  const quiet = useQuiet(saidNow);
  const unsaved = useMemo(() => !sameSaid(quiet, base), [quiet, base]);
  kind.taken = [...told.keys(), ...zones.map(({ id }) => id)];

  useKeptOnLeaving(
    () => {
      const toKeep = outline || !sameSaid(saidNow, base) ? { base, said: saidNow, outline } : null;
      keepPatches(window.sessionStorage, stone.id, toKeep);
    },
    quiet,
    base,
  );

  const tell = (next: readonly StonePatch[]) =>
    setTold((now) => new Map([...now, ...next.map((patch) => [patch.id, patch] as const)]));
  const adopt = (next: PatchesSaid) => {
    tell(next.patches);
    setFactors(next.factors);
    setGrid(next.grid);
    setBase(next);
    if (!sameOutlines(next.patches, desk.current().drawing.zones)) desk.replace(patchDrawing(next.patches));
  };
  const latest = useRef(saidNow);
  latest.current = saidNow;
  const other = useMemo(() => !sameSaid(stone, base), [stone, base]);
  // What somebody else saved comes in by itself as long as nothing is being drawn or typed here.
  const newer = other && !unsaved && quiet === saidNow && !outline;
  useEffect(() => {
    if (newer) adopt(saidOf(stone));
  });
  return {
    desk,
    state,
    ...saidNow,
    faulty,
    unsaved,
    broughtBack: opening.broughtBack,
    savedMeanwhile: other && unsaved,
    said: saidNow,
    saved(from, sent) {
      if (latest.current === sent) adopt(saidOf(from));
      else setBase(saidOf(from));
    },
    takeTheirs: () => adopt(saidOf(stone)),
    keepMine: () => setBase(saidOf(stone)),
    say: tell,
    vary: setFactors,
    lay(next) {
      const drawn = patches.filter(({ row }) => row === null);
      const own = new Set(drawn.map(({ id }) => id));
      const squares = layGrid(next, [...told.values()]).filter(({ id }) => !own.has(id));
      setGrid(next);
      tell(squares);
      desk.replace(patchDrawing([...squares, ...drawn]));
    },
    begin(next) {
      kind.drawnAs = next;
      desk.begin();
    },
    rename(id, next) {
      const patch = patches.find((one) => one.id === id);
      if (!patch) return;
      const named = { ...patch, id: next, square: patch.square === id ? next : patch.square };
      tell([named]);
      desk.replace(patchDrawing(patches.map((one) => (one === patch ? named : one))));
      desk.pick(next);
    },
  };
}

function openDesk(stone: TestStone) {
  const unsaved = readPatches(window.sessionStorage, stone.id);
  const said = unsaved?.said ?? saidOf(stone);
  const base = unsaved?.base ?? said;
  const kind: { drawnAs: DrawnAs; taken: readonly string[] } = { drawnAs: 'image', taken: [] };
  const desk = new ZoneDesk(stone.sizeMm, patchDrawing(base.patches), () =>
    newPatchZone(freePatchId(kind.taken), kind.drawnAs),
  );
  if (unsaved) desk.replace({ ...patchDrawing(said.patches), outline: unsaved.outline });
  const told = new Map([...base.patches, ...said.patches].map((patch) => [patch.id, patch]));
  return { desk, kind, said, base, told, broughtBack: unsaved !== null };
}

type Outlined = Pick<StonePatch, 'id' | 'polygonMm'>;

function sameOutlines(a: readonly Outlined[], b: readonly Outlined[]): boolean {
  const plain = (all: readonly Outlined[]) => JSON.stringify(all.map(({ id, polygonMm }) => [id, polygonMm]));
  return plain(a) === plain(b);
}
