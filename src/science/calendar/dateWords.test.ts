import { expect, it } from 'vitest';
import { isoDayWords, isoMomentWords } from './dateWords.ts';

it('writes a day and a moment by their own clock; what is no date stays as it is', () => {
  expect(isoDayWords('2026-03-04')).toBe('4 Mar 2026');
  expect(isoMomentWords('2026-11-26T17:40:09+01:00')).toBe('26 Nov 2026, 17:40');
  expect(isoMomentWords('2026-11-26')).toBe('26 Nov 2026');
  expect(isoDayWords('spring 1998')).toBe('spring 1998');
  expect(isoDayWords('2026-13-01')).toBe('2026-13-01');
});
