import { expect, it } from 'vitest';
import type { AspectChange } from '../../../records/bench.ts';
import { otherDrawing } from './changeWords.ts';

const zone = (name: string, verdict: AspectChange['verdict']): AspectChange => ({
  aspect: `zone ${name}`,
  name: `medium of ${name}`,
  earlier: null,
  later: null,
  rank: 4,
  verdict,
  note: '',
});

it('drawings differ where more than half of their zones do', () => {
  expect(otherDrawing([zone('Sky', 'changed'), zone('Post', 'changed'), zone('Moon', 'unchanged')])).toBe(
    true,
  );
  expect(otherDrawing([zone('Sky', 'changed'), zone('Post', 'unchanged')])).toBe(false);
  expect(otherDrawing([])).toBe(false);
});
