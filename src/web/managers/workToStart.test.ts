import { expect, it } from 'vitest';
import { emptyWorkToStart, missingOfWork, workInputOf } from './workToStart.ts';

const lowWater = { ...emptyWorkToStart, title: ' Low Water ', stoneId: 's3' };

it('asks for the stone first, then for a title', () => {
  expect(missingOfWork(emptyWorkToStart)).toBe('stone');
  expect(missingOfWork({ ...lowWater, title: ' ' })).toBe('title');
  expect(missingOfWork(lowWater)).toBeNull();
});

it('tells of the past only what was typed and has happened', () => {
  const halfway = {
    ...lowWater,
    begins: 'halfway',
    stage: 'drawn',
    facts: { grain: '220', media: ' ', 'second-etch': 'full' },
  } as const;
  expect(workInputOf(halfway)).toMatchObject({
    title: 'Low Water',
    origin: {
      kind: 'halfway',
      stage: 'drawn',
      gummed: 'unknown',
      history: [{ fact: 'grain', value: '220' }],
    },
  });
  expect(workInputOf({ ...halfway, begins: 'new' }).origin).toEqual({ kind: 'new' });
});
