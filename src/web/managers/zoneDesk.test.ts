import { expect, it } from 'vitest';
import type { WorkZone } from '../../records/work.ts';
import type { Point } from '../../science/geometry/point.ts';
import { ZoneDesk } from './zoneDesk.ts';

const stone: Point = [400, 300];
const post: WorkZone = {
  id: 'post',
  name: 'Post',
  medium: 'solid',
  tone: null,
  polygonMm: [
    [100, 100],
    [130, 100],
    [130, 180],
    [100, 180],
  ],
};
const deskWith = (...zones: WorkZone[]) =>
  new ZoneDesk(stone, { head: 'top', rectangle: null, zones, outline: null });

it('draws a zone point by point and closes it on its first point', () => {
  const desk = deskWith();
  desk.begin();
  for (const [x, y] of [
    [20, 20],
    [200, 21],
    [199, 90],
    [20.5, 20.2],
  ] as const) {
    desk.aim([x, y], 2);
    desk.put(2);
  }
  const { drawing, picked } = desk.current();
  expect(drawing.outline).toBeNull();
  expect(drawing.zones).toEqual([
    {
      id: 'zone-1',
      name: 'Zone A',
      medium: 'unknown',
      tone: null,
      polygonMm: [
        [20, 20],
        [200, 21],
        [199, 90],
      ],
    },
  ]);
  expect(picked).toBe('zone-1');
});

it('draws by keys alone: the cross is pushed, points are put, the last is taken back', () => {
  const desk = deskWith();
  desk.begin();
  desk.place([50, 50]);
  desk.put(0);
  desk.push([100, 0]);
  desk.put(0);
  desk.put(0);
  expect(desk.current().drawing.outline).toHaveLength(2);
  desk.push([0, 40]);
  desk.put(0);
  desk.push([7, 7]);
  desk.put(0);
  desk.removePoint();
  desk.close();
  expect(desk.current().drawing.zones[0]!.polygonMm).toEqual([
    [50, 50],
    [150, 50],
    [150, 90],
  ]);
});

it('brings back an outline that was left', () => {
  const desk = deskWith();
  desk.begin();
  desk.place([10, 10]);
  desk.put(0);
  desk.leave();
  expect(desk.current().drawing.outline).toBeNull();
  desk.undo();
  expect(desk.current().drawing.outline).toEqual([[10, 10]]);
});

it('drags a point to a neighbour, in one step', () => {
  const reeds: WorkZone = {
    ...post,
    id: 'reeds',
    polygonMm: [
      [200, 100],
      [260, 100],
      [260, 180],
    ],
  };
  const desk = deskWith(post, reeds);
  desk.pick('reeds');
  expect(desk.press([201, 101], 3)).toBe(true);
  desk.drag([170, 101], 3);
  desk.drag([131.5, 101.5], 3);
  expect(desk.current()).toMatchObject({ point: 0, against: 'point' });
  desk.release();
  expect(desk.current().drawing.zones[1]!.polygonMm[0]).toEqual([130, 100]);
  desk.undo();
  expect(desk.current().drawing.zones[1]).toEqual(reeds);
});

it('adds a point where a side is pressed, and takes it back with the drag', () => {
  const desk = deskWith(post);
  desk.pick('post');
  expect(desk.press([130.5, 140], 3)).toBe(true);
  desk.drag([140, 141], 0);
  desk.release();
  expect(desk.current().drawing.zones[0]!.polygonMm[2]).toEqual([139.5, 141]);
  desk.undo();
  expect(desk.current().drawing.zones).toEqual([post]);
});

it('moves a zone whole by its letter, no farther than the stone', () => {
  const desk = deskWith(post);
  desk.pick('post');
  expect(desk.press([115, 140], 3)).toBe(true);
  desk.drag([500, 140], 3);
  desk.release();
  expect(desk.current().drawing.zones[0]!.polygonMm.map(([x]) => x)).toEqual([370, 400, 400, 370]);
});

it('grips nothing inside a zone, so that the stone can be moved there; a click takes the zone in hand', () => {
  const desk = deskWith(post);
  desk.pick('post');
  expect(desk.press([120, 120], 3)).toBe(false);
  desk.click([300, 250]);
  expect(desk.current().picked).toBeNull();
  desk.click([110, 110]);
  expect(desk.current().picked).toBe('post');
});

it('goes round the points, adds one, takes it away, and keeps three', () => {
  const desk = deskWith(post);
  desk.pick('post');
  desk.nextPoint(-1);
  expect(desk.current().point).toBe(3);
  desk.nextPoint(1);
  expect(desk.current().point).toBe(0);
  desk.addPoint();
  expect(desk.current()).toMatchObject({ point: 1 });
  expect(desk.current().drawing.zones[0]!.polygonMm[1]).toEqual([115, 100]);
  for (let i = 0; i < 5; i++) desk.removePoint();
  expect(desk.current().drawing.zones[0]!.polygonMm).toHaveLength(3);
});

it('drops a measured tone when the outline changes, and keeps a typed one', () => {
  const measured = { ...post, tone: { mean: 0.4, darkest: 0.7, basis: 'measured' } } as const;
  const desk = deskWith(measured, { ...measured, id: 'typed', tone: { ...measured.tone, basis: 'typed' } });
  for (const id of ['post', 'typed']) {
    desk.pick(id);
    desk.push([1, 0]);
  }
  expect(desk.current().drawing.zones.map(({ tone }) => tone?.basis)).toEqual([undefined, 'typed']);
  desk.undo();
  desk.undo();
  expect(desk.current().drawing.zones[0]!.tone).toEqual(measured.tone);
});

it('takes one run of arrow keys back at once', () => {
  const desk = deskWith(post);
  desk.pick('post', 0);
  for (let i = 0; i < 12; i++) desk.push([-1, 0]);
  expect(desk.current().drawing.zones[0]!.polygonMm[0]).toEqual([88, 100]);
  desk.undo();
  expect(desk.current().drawing.zones).toEqual([post]);
  expect(desk.current().canUndo).toBe(false);
});
