import fc from 'fast-check';
import { expect, it } from 'vitest';
import { endRun, redone, startHistory, undone, withStep } from './zoneHistory.ts';

it('goes back and forth, and forgets what was undone once something else is done', () => {
  let history = withStep(withStep(startHistory('bare'), 'sky'), 'sky and post');
  history = undone(history);
  expect(history.now).toBe('sky');
  expect(redone(history).now).toBe('sky and post');
  history = withStep(history, 'sky and reeds');
  expect(redone(history).now).toBe('sky and reeds');
  expect(undone(undone(undone(history))).now).toBe('bare');
});

it('undoes one drag at once, and two drags of the same point one by one', () => {
  let history = startHistory(0);
  for (const at of [1, 2, 3]) history = withStep(history, at, 'point 1');
  history = endRun(history);
  for (const at of [4, 5]) history = withStep(history, at, 'point 1');
  history = undone(history);
  expect(history.now).toBe(3);
  expect(undone(history).now).toBe(0);
});

it('comes back to where it was for any row of steps', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer(), { minLength: 1, maxLength: 40 }), (values) => {
      const [first, ...rest] = values as [number, ...number[]];
      let history = startHistory(first);
      for (const value of rest) history = withStep(history, value);
      const last = history;
      for (const _ of rest) history = undone(history);
      expect(history.now).toBe(first);
      for (const _ of rest) history = redone(history);
      expect(history).toEqual({ ...last, about: null });
    }),
  );
});
