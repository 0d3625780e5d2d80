import { describe, expect, it } from 'vitest';
import type { WorkZone } from '../../../records/work.ts';
import type { Point } from '../../../science/geometry/point.ts';
import { areaDrawing, areaSign, areasOf, handDrawn } from './toneAreaDrawing.ts';

const box = (x: number): readonly Point[] => [
  [x, 10],
  [x + 20, 10],
  [x + 20, 30],
];
const sky: WorkZone = { id: 'sky', name: 'Sky', medium: 'wash', tone: null, polygonMm: box(10) };
const none = { origin: 'chosen', zones: [], polygonsMm: [] } as const;
const areas = {
  lights: { origin: 'chosen', zones: ['sky'], polygonsMm: [box(10), box(50)] },
  middles: none,
  darks: { origin: 'chosen', zones: [], polygonsMm: [box(90)] },
} as const;

describe('areas of a series on the board', () => {
  it('come back as they were laid out, a zone still known by its id', () => {
    const drawing = areaDrawing(areas, { head: 'top', rectangle: null });
    expect(drawing.zones.map((zone) => areaSign(drawing.zones, zone))).toEqual(['L1', 'L2', 'D1']);
    expect(areasOf(drawing, [sky])).toEqual(areas);
  });

  it('no longer go by a zone once they are moved off it', () => {
    const drawing = areaDrawing(areas, { head: 'top', rectangle: null });
    const moved = {
      ...drawing,
      zones: drawing.zones.map((zone, at) => (at === 0 ? { ...zone, polygonMm: box(11) } : zone)),
    };
    expect(areasOf(moved, [sky]).lights).toEqual({
      ...areas.lights,
      zones: [],
      polygonsMm: [box(11), box(50)],
    });
  });

  it('are drawn by hand where they are no zone’s', () => {
    expect(handDrawn(areas.lights, [sky])).toEqual([box(50)]);
    expect(handDrawn(areas.lights, [])).toEqual([box(10), box(50)]);
  });
});
