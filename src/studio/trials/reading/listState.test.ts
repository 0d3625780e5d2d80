import { expect, it } from 'vitest';
import type { PatchFinding, PrintReading } from '../../../records/patchReading.ts';
import type { StonePatch } from '../../../records/testStone.ts';
import type { TestStoneEvent } from '../../../records/testStoneEvent.ts';
import { listState } from './listState.ts';

const patches = ['A1', 'A2', 'A3'].map((id) => ({ id, intention: 'image' }) as StonePatch);
const event = (more: object, clientId = 'one') =>
  ({ sequence: 1, clientId, actor: 'P.R.', at: '2026-03-02T09:00:00.000Z', ...more }) as TestStoneEvent;
const print = (holds: Readonly<Record<string, PatchFinding['hold']>>) =>
  ({
    print: 'first',
    patches: Object.entries(holds).map(([patch, hold]) => ({ patch, hold, corrections: [] })),
  }) as unknown as PrintReading;

it('stays sealed until every patch of one print has a verdict, by the camera, by hand or by eye', () => {
  expect(listState({ patches }, [], [])).toEqual({ sealed: true, untold: 3, opened: null });
  const read = print({ A1: 'held', A2: 'lost', A3: null });
  expect(listState({ patches }, [], [read])).toMatchObject({ sealed: true, untold: 1 });
  const sitting = [
    event({ kind: 'sitting-begun', payload: { print: 'first', seed: 3 } }),
    event({ kind: 'seen', payload: { sitting: 'one', patch: 'A3', hold: null } }, 'two'),
  ];
  expect(listState({ patches }, sitting, [read])).toMatchObject({ sealed: false, untold: 0 });
  const other = { ...read, print: 'second' };
  expect(listState({ patches }, sitting, [other]), 'read by eye on another print').toMatchObject({
    untold: 1,
  });
});

it('is opened by an act of its own, which says how many patches had no verdict', () => {
  const opening = event({ kind: 'list-opened', payload: { why: 'to see it', untold: 3 } });
  expect(listState({ patches }, [opening], [])).toEqual({
    sealed: false,
    untold: 3,
    opened: { at: opening.at, by: 'P.R.', why: 'to see it', untold: 3 },
  });
});
