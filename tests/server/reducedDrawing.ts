import type { Drawing, Mark } from '../../src/sample/render/drawing.ts';
import type { Point } from '../../src/science/geometry/point.ts';

/** The same drawing on a smaller rectangle, for tests that need its zones and not its size; grain stays as it is. */
export function reducedDrawing(drawing: Drawing, share: number): Drawing {
  const place = ([x, y]: Point): Point => [x * share, y * share];
  const mark = (one: Mark): Mark => {
    if (one.kind === 'strokes') return { ...one, linesMm: one.linesMm.map((line) => line.map(place)) };
    const { meanTone } = one;
    return {
      ...one,
      polygonMm: one.polygonMm.map(place),
      tone: (x, y) => one.tone(x / share, y / share),
      ...(meanTone ? { meanTone: (x: number, y: number) => meanTone(x / share, y / share) } : {}),
    };
  };
  return {
    ...drawing,
    sizeMm: place(drawing.sizeMm),
    marks: drawing.marks.map(mark),
    zones: drawing.zones.map((zone) => ({ ...zone, polygonMm: zone.polygonMm.map(place) })),
    stopOuts: drawing.stopOuts.map(({ centreMm, radiusMm }) => ({
      centreMm: place(centreMm),
      radiusMm: radiusMm * share,
    })),
  };
}
