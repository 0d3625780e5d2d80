import fc from 'fast-check';
import { expect, it } from 'vitest';
import { copiesToRemove } from './thinCopies.ts';

const dayAfter = (start: string, days: number) =>
  new Date(Date.parse(`${start}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

it('two years of days end as 7 days, 4 weeks, 12 months', () => {
  let kept: string[] = [];
  for (let day = 0; day < 730; day++) {
    kept.push(dayAfter('2024-11-26', day));
    const gone = new Set(copiesToRemove(kept));
    kept = kept.filter((one) => !gone.has(one));
  }
  // the last day is Wednesday 25 November 2026
  expect(kept.slice(-7)).toEqual([19, 20, 21, 22, 23, 24, 25].map((day) => `2026-11-${day}`));
  expect(kept.filter((day) => day.startsWith('2026-11'))).toEqual([
    '2026-11-08',
    '2026-11-15',
    ...kept.slice(-7),
  ]);
  const months = kept.filter((day) => day < '2026-11').map((day) => day.slice(0, 7));
  expect(months).toHaveLength(11);
  expect(new Set(months).size).toBe(11);
});

it('whatever days there are: the newest stays, no more than 23 stay, thinning again removes nothing', () => {
  const days = fc.uniqueArray(
    fc.integer({ min: 0, max: 3000 }).map((day) => dayAfter('2020-01-01', day)),
    { minLength: 1 },
  );
  fc.assert(
    fc.property(days, (all) => {
      const gone = new Set(copiesToRemove(all));
      const kept = all.filter((day) => !gone.has(day));
      expect(kept).toContain([...all].sort().at(-1));
      expect(kept.length).toBeLessThanOrEqual(23);
      expect(copiesToRemove(kept)).toEqual([]);
    }),
  );
});
