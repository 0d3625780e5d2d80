import type { WorkZone } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { apartMm, type LaidPlace, laidAgainst } from './laidAgainst.ts';
import { neighbourEdge } from './neighbourEdge.ts';
import {
  type ClosedAs,
  type Drawing,
  namedZone,
  neighboursOf,
  withClosedOutline,
  withoutZone,
  withZone,
  type ZoneChanges,
  zoneOf,
} from './zoneDrawing.ts';
import { heldAt } from './zoneHeld.ts';
import { endRun, type History, redone, startHistory, undone, withStep } from './zoneHistory.ts';
import {
  middleAfter,
  movedOutline,
  onStone,
  withoutPoint,
  withPointAfter,
  withPointAt,
} from './zoneOutline.ts';
import { zoneAt } from './zonePlace.ts';

/** The desk as a screen shows it. */
export interface DeskState {
  readonly drawing: Drawing;
  /** The zone in hand. */
  readonly picked: string | null;
  /** The point in hand, of the zone in hand. */
  readonly point: number | null;
  /** Where the next point of an outline would lie. */
  readonly cross: Point;
  /** What the point or the cross was laid against. */
  readonly against: LaidPlace['to'];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

type Hold =
  | { readonly kind: 'point'; readonly zone: string; readonly index: number; readonly off: Point }
  | {
      readonly kind: 'zone';
      readonly zone: string;
      readonly from: Point;
      readonly outline: readonly Point[];
    };

/**
 * Owns the geometry of a work's zones while they are drawn: what is in hand, what a press takes hold of, the way back. Places
 * come in stone mm; `reachMm` is how near a press, or the edge that a point ends at, must be.
 */
export class ZoneDesk {
  readonly #stoneMm: Point;
  readonly #closedAs: ClosedAs;
  readonly #listeners = new Set<() => void>();
  #history: History<Drawing>;
  #state: DeskState;
  #hold: Hold | null = null;

  /** @param closedAs what an outline becomes once it is closed; a zone named for its letter unless told. */
  constructor(stoneMm: Point, drawing: Drawing, closedAs: ClosedAs = namedZone) {
    this.#stoneMm = stoneMm;
    this.#closedAs = closedAs;
    this.#history = startHistory(drawing);
    const cross: Point = [Math.round(stoneMm[0] / 2), Math.round(stoneMm[1] / 2)];
    this.#state = { ...inHand, drawing, cross, canUndo: false, canRedo: false };
  }

  readonly current = (): DeskState => this.#state;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Takes a zone in hand, and one of its points; null lays down what was. */
  pick(zone: string | null, point: number | null = null): void {
    this.#history = endRun(this.#history);
    this.#show({ picked: zone, point, against: 'nothing' });
  }

  /** Takes the next point of the zone in hand (`step` 1) or the one before (−1). */
  nextPoint(step: 1 | -1): void {
    const count = this.#picked()?.polygonMm.length ?? 0;
    if (count === 0) return;
    const { point } = this.#state;
    this.pick(
      this.#state.picked,
      point === null ? (step > 0 ? 0 : count - 1) : (point + step + count) % count,
    );
  }

  /** Starts an outline. */
  begin(): void {
    if (this.#state.drawing.outline) return;
    this.#step({ ...this.#state.drawing, outline: [] }, null, { picked: null, point: null });
  }

  /** Moves the cross, and lays it against what is within reach. */
  aim(placeMm: Point, reachMm: number): void {
    const { at, to } = laidAgainst(placeMm, neighboursOf(this.#state.drawing, this.#stoneMm, null), reachMm);
    this.#show({ cross: onStone(at, this.#stoneMm), against: to });
  }

  /** Puts a point of the outline at the cross; on its first point, the outline is closed. */
  put(reachMm: number): void {
    const { drawing, cross } = this.#state;
    const outline = drawing.outline;
    if (!outline) return;
    const [first] = outline;
    const last = outline.at(-1);
    if (first && outline.length >= 3 && apartMm(first, cross) <= reachMm) this.close();
    else if (last?.[0] !== cross[0] || last[1] !== cross[1])
      this.#step({ ...drawing, outline: [...outline, cross] }, null);
  }

  /** Closes the outline into a zone, which is then in hand; nothing happens under three points. */
  close(): void {
    const closed = withClosedOutline(this.#state.drawing, this.#closedAs(this.#state.drawing));
    if (closed) this.#step(closed.drawing, null, { picked: closed.id, point: null });
  }

  /** Leaves the outline, which undoing brings back; else lays down what is in hand, the point first. */
  leave(): void {
    if (this.#state.drawing.outline) this.#step({ ...this.#state.drawing, outline: null }, null);
    else this.pick(this.#state.point === null ? null : this.#state.picked);
  }

  /**
   * A press on the stone: takes hold of a point of the zone in hand, its side (where a point is added) or its letter (which
   * moves it whole), or takes another zone in hand.
   * @returns whether something was held; if not, the stone itself is to be moved.
   */
  press(placeMm: Point, reachMm: number): boolean {
    const zone = this.#picked();
    const held = zone && heldAt(zone.polygonMm, placeMm, reachMm);
    if (!zone || !held) return false;
    if (held.part === 'letter') {
      this.#hold = { kind: 'zone', zone: zone.id, from: placeMm, outline: zone.polygonMm };
      this.pick(zone.id);
      return true;
    }
    if (held.part === 'side') this.#addAfter(zone, held.after, held.at);
    const index = held.part === 'side' ? held.after + 1 : held.index;
    const [x, y] = this.#picked()!.polygonMm[index]!;
    this.#hold = { kind: 'point', zone: zone.id, index, off: [x - placeMm[0], y - placeMm[1]] };
    this.#show({ point: index, against: 'nothing' });
    return true;
  }

  /** A press that did not move: the zone there is taken in hand, or none. */
  click(placeMm: Point): void {
    this.pick(zoneAt(this.#state.drawing.zones, placeMm)?.id ?? null);
  }

  /** What is held follows. */
  drag(placeMm: Point, reachMm: number): void {
    const hold = this.#hold;
    if (!hold) return;
    if (hold.kind === 'zone') {
      const by: Point = [placeMm[0] - hold.from[0], placeMm[1] - hold.from[1]];
      this.#outline(hold.zone, movedOutline(hold.outline, by, this.#stoneMm), `move ${hold.zone}`);
      return;
    }
    const wanted: Point = [placeMm[0] + hold.off[0], placeMm[1] + hold.off[1]];
    const { at, to } = laidAgainst(wanted, neighboursOf(this.#state.drawing, this.#stoneMm, hold), reachMm);
    const outline = zoneOf(this.#state.drawing, hold.zone)!.polygonMm;
    const next = withPointAt(outline, hold.index, onStone(at, this.#stoneMm));
    this.#outline(hold.zone, next, `point ${hold.zone} ${hold.index}`, { against: to });
  }

  /** Lets go. */
  release(): void {
    this.#hold = null;
    this.#history = endRun(this.#history);
    if (this.#state.against !== 'nothing') this.#show({ against: 'nothing' });
  }

  /** Moves what is in hand by a distance: the cross while drawing, else the point, else the zone. */
  push(byMm: Point): void {
    const { drawing, cross, point } = this.#state;
    const zone = this.#picked();
    const moved = ([x, y]: Point) => onStone([x + byMm[0], y + byMm[1]], this.#stoneMm);
    if (drawing.outline) this.#show({ cross: moved(cross), against: 'nothing' });
    else if (zone && point === null)
      this.#outline(zone.id, movedOutline(zone.polygonMm, byMm, this.#stoneMm), `push ${zone.id}`);
    else if (zone && point !== null) {
      const next = withPointAt(zone.polygonMm, point, moved(zone.polygonMm[point]!));
      this.#outline(zone.id, next, `push ${zone.id} ${point}`);
    }
  }

  /** Puts the cross, or the point in hand, at a typed place. */
  place(placeMm: Point): void {
    const at = onStone(placeMm, this.#stoneMm);
    const zone = this.#picked();
    if (this.#state.drawing.outline) this.#show({ cross: at, against: 'nothing' });
    else if (zone && this.#state.point !== null)
      this.#outline(zone.id, withPointAt(zone.polygonMm, this.#state.point, at), null);
  }

  /** Brings the cross, or the point in hand, to the nearest edge of another zone. */
  toEdge(at = neighbourEdge(this.#state)): void {
    if (at) this.place(at);
  }

  /** Adds a point halfway after the one in hand, and takes it in hand. */
  addPoint(): void {
    const zone = this.#picked();
    if (!zone) return;
    const after = this.#state.point ?? zone.polygonMm.length - 1;
    this.#addAfter(zone, after, middleAfter(zone.polygonMm, after));
  }

  /** Takes away the point in hand, of more than three; while drawing, the last point put. */
  removePoint(): void {
    const { drawing, point } = this.#state;
    const zone = this.#picked();
    const next = zone && point !== null ? withoutPoint(zone.polygonMm, point) : null;
    if (drawing.outline) this.#step({ ...drawing, outline: drawing.outline.slice(0, -1) }, null);
    else if (zone && next && next !== zone.polygonMm && point !== null)
      this.#outline(zone.id, next, null, { point: Math.min(point, next.length - 1) });
  }

  /** Says what a zone is; typing in one field is one step back. */
  change(id: string, changes: ZoneChanges): void {
    const about = `${id} ${Object.keys(changes).join()}`;
    this.#step(withZone(this.#state.drawing, id, changes), about);
  }

  /** Takes a zone away. */
  remove(id: string): void {
    this.#step(withoutZone(this.#state.drawing, id), null, { picked: null, point: null });
  }

  /** Sets the edge of the head, or the work rectangle (null takes it away). */
  arrange(changes: Partial<Pick<Drawing, 'head' | 'rectangle'>>): void {
    this.#step({ ...this.#state.drawing, ...changes }, Object.keys(changes).join());
  }

  /** Puts another drawing in place, as one step. */
  replace(drawing: Drawing): void {
    this.#step(drawing, null);
  }

  undo(): void {
    this.#history = undone(this.#history);
    this.#show({});
  }

  redo(): void {
    this.#history = redone(this.#history);
    this.#show({});
  }

  #picked(): WorkZone | undefined {
    return zoneOf(this.#state.drawing, this.#state.picked);
  }

  #addAfter(zone: WorkZone, after: number, atMm: Point): void {
    const outline = withPointAfter(zone.polygonMm, after, onStone(atMm, this.#stoneMm));
    // The same run as the drag that follows, so that one step takes back both.
    this.#outline(zone.id, outline, `point ${zone.id} ${after + 1}`, { point: after + 1 });
  }

  #outline(
    zone: string,
    polygonMm: readonly Point[],
    about: string | null,
    hand: Partial<DeskState> = {},
  ): void {
    this.#step(withZone(this.#state.drawing, zone, { polygonMm }), about, hand);
  }

  #step(drawing: Drawing, about: string | null, hand: Partial<DeskState> = {}): void {
    this.#history = withStep(this.#history, drawing, about);
    this.#show(hand);
  }

  #show(changes: Partial<DeskState>): void {
    const next = { ...this.#state, ...changes, drawing: this.#history.now };
    const zone = zoneOf(next.drawing, next.picked);
    const point = zone && next.point !== null && next.point < zone.polygonMm.length ? next.point : null;
    this.#state = {
      ...next,
      picked: zone?.id ?? null,
      point,
      canUndo: this.#history.before.length > 0,
      canRedo: this.#history.after.length > 0,
    };
    for (const listener of this.#listeners) listener();
  }
}

const inHand = { picked: null, point: null, against: 'nothing' } as const;
