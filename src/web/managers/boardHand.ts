import type { Point } from '../../science/geometry/point.ts';
import { type LinkedView, panBy, toStoneMm, wholeView, zoomAbout } from './linkedView.ts';

/** Who works on the board: told in stone mm what presses mean; `reachMm` is how near counts as on it. */
export interface BoardUser {
  /** @returns whether something was gripped; if not, the view is moved. */
  press(stoneMm: Point, reachMm: number): boolean;
  drag(stoneMm: Point, reachMm: number): void;
  /** @param dropped false where a second finger came and the view is moved instead. */
  release(reachMm: number, dropped: boolean): void;
  /** A press that gripped nothing and did not move. */
  click(stoneMm: Point): void;
  /** A pointer passes over without pressing. */
  hover(stoneMm: Point, reachMm: number): void;
}

/** How near a pointer must come, screen px: a finger covers more than a mouse's tip. */
const reachPx = { fine: 10, coarse: 24 } as const;
const marginPx = 28;
/** A press that moves less than this is a click, screen px. */
const stillPx = 5;

interface Down {
  readonly px: Point;
  readonly startPx: Point;
  readonly coarse: boolean;
}

/**
 * Owns what part of the stone a board shows, and turns pointers into presses on the stone: one pointer works or moves
 * the view, two bring it closer. Places come in px from the board's top left.
 */
export class BoardHand {
  readonly #stoneMm: Point;
  readonly #changed: () => void;
  readonly #down = new Map<number, Down>();
  #areaPx: Point = [400, 400];
  #moved = false;
  #doing: 'nothing' | 'gripping' | 'moving the view' = 'nothing';
  user: BoardUser | null = null;
  view: LinkedView;

  /** `changed` is called whenever the view is another. */
  constructor(stoneMm: Point, changed: () => void) {
    this.#stoneMm = stoneMm;
    this.#changed = changed;
    this.view = wholeView(stoneMm, this.#areaPx, marginPx);
  }

  get areaPx(): Point {
    return this.#areaPx;
  }

  /** The board has another size; the whole stone stays in sight until somebody has come closer. */
  resize(areaPx: Point): void {
    this.#areaPx = areaPx;
    if (this.#moved) this.#changed();
    else this.whole();
  }

  /** Shows the whole stone. */
  whole(): void {
    this.#moved = false;
    this.#set(wholeView(this.#stoneMm, this.#areaPx, marginPx));
  }

  /** Comes closer (factor above 1) or goes farther, about a place on the board, else its middle. */
  zoom(factor: number, aboutPx: Point = [this.#areaPx[0] / 2, this.#areaPx[1] / 2]): void {
    this.#moved = true;
    const whole = wholeView(this.#stoneMm, this.#areaPx, marginPx);
    this.#set(zoomAbout(this.view, factor, aboutPx, whole));
  }

  /** Moves the view. */
  pan(byPx: Point): void {
    this.#moved = true;
    this.#set(panBy(this.view, byPx, this.#stoneMm, this.#areaPx));
  }

  /** Brings a place into sight where it is out of it. */
  show(stoneMm: Point): void {
    const { pxPerMm, offsetPx } = this.view;
    const by = [0, 1].map((axis) => {
      const at = stoneMm[axis]! * pxPerMm + offsetPx[axis]!;
      return at < marginPx ? marginPx - at : Math.min(this.#areaPx[axis]! - marginPx - at, 0);
    });
    if (by[0] !== 0 || by[1] !== 0) this.pan([by[0]!, by[1]!]);
  }

  /** A pointer goes down. `working` false (another mouse button): it moves the view whatever lies there. */
  down(pointer: number, px: Point, coarse: boolean, working: boolean): void {
    this.#down.set(pointer, { px, startPx: px, coarse });
    if (this.#down.size > 1) {
      if (this.#doing === 'gripping') this.user?.release(this.#reachMm(coarse), false);
      this.#doing = 'moving the view';
      return;
    }
    const gripped = working && this.user?.press(toStoneMm(this.view, px), this.#reachMm(coarse));
    this.#doing = gripped ? 'gripping' : 'moving the view';
  }

  /** A pointer moves, down or not. */
  move(pointer: number, px: Point, coarse: boolean): void {
    const was = this.#down.get(pointer);
    if (!was) {
      this.user?.hover(toStoneMm(this.view, px), this.#reachMm(coarse));
      return;
    }
    this.#down.set(pointer, { ...was, px });
    const other = [...this.#down].find(([id]) => id !== pointer)?.[1];
    if (other) this.#pinch(was.px, px, other.px);
    else if (this.#doing === 'gripping') {
      if (distance(was.startPx, px) > stillPx || was.px !== was.startPx)
        this.user?.drag(toStoneMm(this.view, px), this.#reachMm(coarse));
      else this.#down.set(pointer, was);
    } else if (distance(was.startPx, px) > stillPx || was.px !== was.startPx)
      this.pan([px[0] - was.px[0], px[1] - was.px[1]]);
    else this.#down.set(pointer, was);
  }

  /** A pointer goes up; `lost` where the browser took it away. */
  up(pointer: number, lost = false): void {
    const was = this.#down.get(pointer);
    if (!was) return;
    this.#down.delete(pointer);
    if (this.#doing === 'gripping') this.user?.release(this.#reachMm(was.coarse), !lost);
    else if (this.#down.size === 0 && was.px === was.startPx && !lost)
      this.user?.click(toStoneMm(this.view, was.px));
    this.#doing = this.#down.size > 0 ? 'moving the view' : 'nothing';
  }

  #pinch(wasPx: Point, nowPx: Point, otherPx: Point): void {
    const middle: Point = [(nowPx[0] + otherPx[0]) / 2, (nowPx[1] + otherPx[1]) / 2];
    this.pan([(nowPx[0] - wasPx[0]) / 2, (nowPx[1] - wasPx[1]) / 2]);
    this.zoom(distance(nowPx, otherPx) / Math.max(distance(wasPx, otherPx), 1), middle);
  }

  #reachMm(coarse: boolean): number {
    return (coarse ? reachPx.coarse : reachPx.fine) / this.view.pxPerMm;
  }

  #set(view: LinkedView): void {
    this.view = view;
    this.#changed();
  }
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
