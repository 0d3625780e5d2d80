import { expect, it } from 'vitest';
import { neighbourEdge } from './neighbourEdge.ts';
import type { DeskState } from './zoneDesk.ts';

const square = (id: string, left: number) => ({
  id,
  polygonMm: [
    [left, 10],
    [left + 20, 10],
    [left + 20, 30],
    [left, 30],
  ],
});
const state = (more: object): DeskState =>
  ({
    drawing: { zones: [square('a', 10), square('b', 50)], outline: null },
    cross: [0, 0],
    picked: null,
    point: null,
    ...more,
  }) as unknown as DeskState;

it('finds the edge of another zone, never of the own', () => {
  expect(neighbourEdge(state({ picked: 'a', point: 1 }))).toEqual([50, 10]);
  expect(neighbourEdge(state({ picked: 'b', point: 3 }))).toEqual([30, 30]);
});

it('while an outline is drawn, goes by the cross; with nothing in hand there is none', () => {
  const { drawing } = state({});
  expect(neighbourEdge(state({ drawing: { ...drawing, outline: [] }, cross: [38, 20] }))).toEqual([30, 20]);
  expect(neighbourEdge(state({}))).toBeNull();
  expect(neighbourEdge(state({ drawing: { zones: [], outline: [] }, cross: [1, 1] }))).toBeNull();
});
