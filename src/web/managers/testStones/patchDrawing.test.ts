import { expect, it } from 'vitest';
import type { StonePatch } from '../../../records/testStone.ts';
import { layGrid } from '../../../studio/trials/reading/layGrid.ts';
import { withClosedOutline } from '../zoneDrawing.ts';
import {
  freePatchId,
  laidInBox,
  laidLarger,
  newPatchZone,
  outlineBox,
  patchDrawing,
  patchesOf,
  patchIdTrouble,
} from './patchDrawing.ts';
import { keepPatches, readPatches, sameSaid } from './unsavedPatches.ts';
import { wholeGrid } from './wholeGrid.ts';

const patches = layGrid(wholeGrid([300, 200], 1, 2)).map((patch) => ({
  ...patch,
  treatment: { etch: `gum ${patch.id}` },
}));
const said = new Map(patches.map((patch) => [patch.id, patch]));

it('keeps what was said of a patch that moves, goes and comes back', () => {
  const { zones } = patchDrawing(patches);
  expect(patchesOf(zones, said)).toEqual(patches);
  const polygonMm = laidInBox(zones[0]!.polygonMm, { fromMm: [5, 6], sizeMm: [40, 30] }, [300, 200]);
  const moved = patchesOf([{ ...zones[0]!, polygonMm }], said);
  expect(moved).toEqual([{ ...patches[0]!, polygonMm }]);
  expect(patchesOf(zones, said)).toHaveLength(2);
});

it('closes an outline as what it was begun as, under a number that no square has', () => {
  const outline = [
    [1, 1],
    [9, 1],
    [9, 9],
  ] as const;
  const drawing = { ...patchDrawing(patches), outline };
  const closed = withClosedOutline(
    drawing,
    newPatchZone(freePatchId(['1', 'row 1, first', 'row 1, second']), 'guide'),
  )!;
  const [, , guide] = patchesOf(closed.drawing.zones, said);
  expect(closed.id).toBe('2');
  expect(guide).toMatchObject({ id: '2', square: '2', row: null, intention: 'guide', treatment: {} });
  expect(guide!.polygonMm).toEqual(outline);
});

it('draws an outline out with its rectangle, and never off the stone', () => {
  const triangle = [
    [10, 10],
    [30, 10],
    [20, 50],
  ] as const;
  expect(outlineBox(triangle)).toEqual({ fromMm: [10, 10], sizeMm: [20, 40] });
  expect(laidInBox(triangle, { fromMm: [0, 20], sizeMm: [10, 80] }, [100, 100])).toEqual([
    [0, 20],
    [10, 20],
    [5, 100],
  ]);
  const pushed = laidInBox(triangle, { fromMm: [95, 10], sizeMm: [20, 400] }, [100, 100]);
  expect(outlineBox(pushed)).toEqual({ fromMm: [80, 0], sizeMm: [20, 100] });
});

it('says what keeps a patch from a name', () => {
  expect(patchIdTrouble(' ', [], false)).toContain('name');
  expect(patchIdTrouble('moon', ['moon'], false)).toContain('moon');
  expect(patchIdTrouble('row 2, third', [], true)).toContain('squares');
  expect(patchIdTrouble('row 2, third', [], false)).toBeNull();
  expect(patchIdTrouble('moon', ['1'], true)).toBeNull();
});

it('lays unsaved patches on a shelf and finds them again; what is not readable is not there', () => {
  const items = new Map<string, string>();
  const shelf = {
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
    removeItem: (key: string) => void items.delete(key),
  };
  const kept = { patches: patches as readonly StonePatch[], factors: [], grid: null };
  const unsaved = { base: kept, said: { ...kept, patches: [] }, outline: [[1, 2]] as const };
  keepPatches(shelf, 'T-1', unsaved);
  expect(readPatches(shelf, 'T-1')).toEqual(unsaved);
  expect(readPatches(shelf, 'T-2')).toBeNull();
  items.set([...items.keys()][0]!, '{"base":{"patches":4}}');
  expect(readPatches(shelf, 'T-1')).toBeNull();
  keepPatches(shelf, 'T-1', null);
  expect(items.size).toBe(0);
});

it('takes two for the same whatever order their levels come in', () => {
  const of = (treatment: StonePatch['treatment']) => ({
    patches: [{ ...patches[0]!, treatment }],
    factors: [],
    grid: null,
  });
  expect(sameSaid(of({ a: '1', b: '2' }), of({ b: '2', a: '1' }))).toBe(true);
  expect(sameSaid(of({ a: '1' }), of({ a: '2' }))).toBe(false);
});

it('is made larger by its corner, never to nothing nor off the stone', () => {
  const square: readonly (readonly [number, number])[] = [
    [10, 10],
    [30, 10],
    [30, 30],
    [10, 30],
  ];
  expect(laidLarger(square, [5, -10], [100, 100])[2]).toEqual([35, 20]);
  expect(laidLarger(square, [-50, 0], [100, 100])[2]).toEqual([10.5, 30]);
  const wide = laidLarger(square, [500, 0], [100, 100]);
  expect(Math.max(...wide.map(([x]) => x))).toBe(100);
});
