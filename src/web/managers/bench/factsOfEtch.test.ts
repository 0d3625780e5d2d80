import { expect, it } from 'vitest';
import { logOf } from '../../../studio/bench/benchLog.testing.ts';
import { factsOfEtch } from './factsOfEtch.ts';

const fact = (sequence: number) => ({ fact: 'contact-short' as const, sequence, words: `at ${sequence}` });

it('tells of the etch begun last only, until that beginning is taken back', () => {
  const { log, events } = logOf();
  log('stage-started', { stage: 'first-etch' }, { s: 0 });
  log('lifted', { place: 'sky' }, { s: 10 });
  const facts = [fact(2), fact(4)];
  expect(factsOfEtch(facts, events)).toEqual(facts);
  const begun = log('stage-started', { stage: 'second-etch' }, { s: 20 });
  expect(factsOfEtch(facts, events)).toEqual([fact(4)]);
  log('undo', { clientId: begun.clientId }, { s: 30 });
  expect(factsOfEtch(facts, events)).toEqual(facts);
  expect(factsOfEtch(facts, [])).toEqual(facts);
});
