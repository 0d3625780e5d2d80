import { expect, it } from 'vitest';
import { pullPaper } from './pullPaper.ts';
import { paperWords } from './workSeries.ts';

const pull = (words: string, damp: boolean | null) => ({ paper: { id: null, words }, damp });

it('says once how a paper was printed', () => {
  expect(pullPaper(pull('rag, 250 g/m², damp', true))).toBe('rag, 250 g/m²');
  expect(paperWords(pull('rag, 250 g/m², damp', true))).toBe('rag, 250 g/m², damp');
  expect(pullPaper(pull('rag, dry', false))).toBe('rag');
  // printed otherwise than the kit has it, or nobody said how: both stay
  expect(pullPaper(pull('rag, damp', false))).toBe('rag, damp');
  expect(pullPaper(pull('rag, damp', null))).toBe('rag, damp');
});
