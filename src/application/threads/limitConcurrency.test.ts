import { expect, it } from 'vitest';
import { limitConcurrency } from './limitConcurrency.ts';

it('runs no more jobs at once than allowed, in order, also after one failed', async () => {
  const run = limitConcurrency(2);
  let running = 0;
  let most = 0;
  const started: number[] = [];
  const jobs = [0, 1, 2, 3, 4].map((index) =>
    run(async () => {
      started.push(index);
      running += 1;
      most = Math.max(most, running);
      await new Promise((resolve) => setTimeout(resolve, 5));
      running -= 1;
      if (index === 1) throw new Error('one failed');
      return index;
    }),
  );
  const ends = await Promise.allSettled(jobs);
  expect(most).toBe(2);
  expect(started).toEqual([0, 1, 2, 3, 4]);
  expect(ends.map((end) => end.status)).toEqual([
    'fulfilled',
    'rejected',
    'fulfilled',
    'fulfilled',
    'fulfilled',
  ]);
});
