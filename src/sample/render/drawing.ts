import type { Zone } from '../../records/zone.ts';
import type { Point } from '../../science/geometry/point.ts';

/** How a tone sits on the stone: broken by the grain, as a film of wash, full, or already resolved (a scan). */
export type Texture = 'crayon' | 'wash' | 'full' | 'resolved';

/** A tone over an area: `tone` gives 0..1 at stone mm, inside `polygonMm`. */
export interface AreaMark {
  readonly kind: 'area';
  readonly zoneId: string | null;
  readonly texture: Texture;
  readonly polygonMm: readonly Point[];
  tone(xMm: number, yMm: number): number;
  /** Local mean tone, which printing acts on; only a resolved texture needs one. */
  meanTone?(xMm: number, yMm: number): number;
}

/** Pen or crayon strokes of one width and tone; each is a line through its points. */
export interface StrokeMark {
  readonly kind: 'strokes';
  readonly zoneId: string | null;
  readonly texture: 'crayon' | 'full';
  readonly tone: number;
  readonly widthMm: number;
  readonly linesMm: readonly (readonly Point[])[];
}

export type Mark = AreaMark | StrokeMark;

/** A whole drawing: its marks in the order they were put down, and the zones that describe it. */
export interface Drawing {
  readonly name: string;
  readonly sizeMm: Point;
  readonly marks: readonly Mark[];
  readonly zones: readonly Zone[];
  /** Places that stay bare whatever lies under them (stop-out, scraped white): gum kept the stone clean. */
  readonly stopOuts: readonly { readonly centreMm: Point; readonly radiusMm: number }[];
}

/** The four corner points of an upright rectangle, clockwise from top left. */
export function rectangleMm(left: number, top: number, width: number, height: number): Point[] {
  return [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
}

/** Four corner marks, right-angled strokes just inside the work rectangle; the top left one is an F. */
export function cornerMarks(sizeMm: Point): StrokeMark {
  const [width, height] = sizeMm;
  const inset = 0.5;
  const arm = 9;
  const angle = (x: number, y: number, dx: number, dy: number): Point[] => [
    [x + dx * arm, y],
    [x, y],
    [x, y + dy * arm],
  ];
  return {
    kind: 'strokes',
    zoneId: null,
    texture: 'full',
    tone: 1,
    widthMm: 0.9,
    linesMm: [
      angle(inset, inset, 1, 1),
      [
        [inset, inset + arm * 0.5],
        [inset + arm * 0.6, inset + arm * 0.5],
      ],
      angle(width - inset, inset, -1, 1),
      angle(width - inset, height - inset, -1, -1),
      angle(inset, height - inset, 1, -1),
    ],
  };
}
