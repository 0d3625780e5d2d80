import type { Point } from '../../science/geometry/point.ts';
import { sheetPlace } from './liftPainter.ts';
import {
  type LinkedView,
  type PlaceMm,
  panBy,
  viewBetween,
  viewOnPlace,
  wholeView,
  zoomAbout,
} from './linkedView.ts';
import { gripOff, heldLift, type Lift, liftAt, liftByKey, liftedSheet } from './sheetLift.ts';

/** Where everything is at one moment. */
export interface DeskState {
  readonly view: LinkedView;
  readonly lift: Lift;
}

type Hold = { readonly kind: 'sheet'; readonly offPx: number } | { readonly kind: 'desk' } | null;

const marginPx = 18;
const panStepPx = 60;

/**
 * The desk on which stone and print lie: one view for both and how far the sheet is lifted.
 * Knows nothing of the page: a part hands it places, pushes and keys and draws what it then says.
 */
export class LiftDesk {
  readonly #sizeMm: Point;
  readonly #sheet: PlaceMm;
  readonly #changed: () => void;
  #area: Point = [0, 0];
  #whole: LinkedView;
  #state: DeskState;
  #hold: Hold = null;
  #travel: { from: DeskState; to: DeskState; startedAt: number; lastsMs: number } | null = null;

  /** `changed` is called whenever something must be drawn anew. */
  constructor(sizeMm: Point, changed: () => void) {
    this.#sizeMm = sizeMm;
    this.#sheet = sheetPlace(sizeMm);
    this.#changed = changed;
    this.#whole = wholeView(sizeMm, [400, 400], marginPx);
    this.#state = { view: this.#whole, lift: 0 };
  }

  get state(): DeskState {
    return this.#state;
  }

  /** Whether the whole stone is in view, as at the beginning. */
  get isWhole(): boolean {
    return Math.abs(this.#state.view.pxPerMm / this.#whole.pxPerMm - 1) < 0.01;
  }

  /** The area on screen changed; the whole stone is shown again unless one was looking closer. */
  resize(areaPx: Point): void {
    if (areaPx[0] === this.#area[0] && areaPx[1] === this.#area[1]) return;
    const wasWhole = this.#area[0] === 0 || this.isWhole;
    this.#area = areaPx;
    this.#whole = viewOnPlace(this.#sheet, areaPx, marginPx);
    this.#put({
      ...this.#state,
      view: wasWhole ? this.#whole : panBy(this.#state.view, [0, 0], this.#sizeMm, areaPx),
    });
  }

  zoom(factor: number, aboutPx: Point = [this.#area[0] / 2, this.#area[1] / 2]): void {
    const view = zoomAbout(this.#state.view, factor, aboutPx, this.#whole);
    this.#put({ ...this.#state, view: panBy(view, [0, 0], this.#sizeMm, this.#area) });
  }

  pan(byPx: Point): void {
    this.#put({ ...this.#state, view: panBy(this.#state.view, byPx, this.#sizeMm, this.#area) });
  }

  lift(lift: Lift): void {
    this.#put({ ...this.#state, lift: heldLift(lift) });
  }

  /** Moves over to a place (null: the whole stone) and a lift; at once where `lastsMs` is 0. */
  travelTo(place: PlaceMm | null, lift: Lift, lastsMs: number, nowMs: number): void {
    const to = { view: place ? viewOnPlace(place, this.#area, 40) : this.#whole, lift: heldLift(lift) };
    if (lastsMs <= 0) {
      this.#put(to);
      return;
    }
    this.#travel = { from: this.#state, to, startedAt: nowMs, lastsMs };
    this.#changed();
  }

  /** Carries a running travel on, slow at both ends; true when it moved, so that all about it is drawn anew. */
  step(nowMs: number): boolean {
    const travel = this.#travel;
    if (!travel) return false;
    const share = Math.min(Math.max((nowMs - travel.startedAt) / travel.lastsMs, 0), 1);
    const eased = share * share * (3 - 2 * share);
    this.#state = {
      view: viewBetween(travel.from.view, travel.to.view, eased),
      lift: travel.from.lift + (travel.to.lift - travel.from.lift) * eased,
    };
    if (share >= 1) this.#travel = null;
    return true;
  }

  /** A pointer came down: takes the sheet's edge if it is there, else the desk. */
  take(atPx: Point): 'sheet' | 'desk' {
    const off = gripOff(liftedSheet(this.#state.view, this.#sheet, this.#state.lift), atPx);
    this.#hold = off === null ? { kind: 'desk' } : { kind: 'sheet', offPx: off };
    return this.#hold.kind;
  }

  /** The pointer that holds something moved. */
  drag(atPx: Point, byPx: Point): void {
    if (this.#hold?.kind === 'sheet')
      this.lift(liftAt(this.#state.view, this.#sheet, atPx, this.#hold.offPx));
    else if (this.#hold?.kind === 'desk') this.pan(byPx);
  }

  release(): void {
    this.#hold = null;
  }

  /** Whether a pointer here would take the sheet's edge. */
  isGrip(atPx: Point): boolean {
    return gripOff(liftedSheet(this.#state.view, this.#sheet, this.#state.lift), atPx) !== null;
  }

  /** Where the rolled edge is taken hold of: middle of what is seen of it, px. */
  gripPx(): Point {
    const sheet = liftedSheet(this.#state.view, this.#sheet, this.#state.lift);
    const y = (Math.max(sheet.foldTopPx[1], 0) + Math.min(sheet.foldBottomPx[1], this.#area[1])) / 2;
    const x = (sheet.foldTopPx[0] + sheet.foldBottomPx[0]) / 2 + sheet.rollPx * 0.72;
    return [Math.min(Math.max(x, 24), this.#area[0] - 24), y];
  }

  /** A key on the sheet's edge; true when it meant something. */
  liftKey(key: string): boolean {
    const lift = liftByKey(this.#state.lift, key);
    if (lift === null) return false;
    this.lift(lift);
    return true;
  }

  /** A key on the desk: arrows push, plus and minus bring closer and farther; true when it meant something. */
  deskKey(key: string): boolean {
    const pushes: Record<string, Point> = {
      ArrowLeft: [panStepPx, 0],
      ArrowRight: [-panStepPx, 0],
      ArrowUp: [0, panStepPx],
      ArrowDown: [0, -panStepPx],
    };
    const push = pushes[key];
    if (push) this.pan(push);
    else if (key === '+' || key === '=') this.zoom(1.4);
    else if (key === '-') this.zoom(1 / 1.4);
    else return false;
    return true;
  }

  #put(state: DeskState): void {
    this.#travel = null;
    this.#state = state;
    this.#changed();
  }
}
