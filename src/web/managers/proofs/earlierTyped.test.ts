import { expect, it } from 'vitest';
import { earlierTyped } from './earlierTyped.ts';

it('a pull for approval that an earlier page let lie is one still, and others stay as they are', () => {
  expect(earlierTyped({ number: 4, kind: 'candidate' as never })).toEqual({
    number: 4,
    kind: 'for-approval',
  });
  const other = { number: 2, kind: 'proof' } as const;
  expect(earlierTyped(other)).toBe(other);
  expect(earlierTyped({})).toEqual({});
});
