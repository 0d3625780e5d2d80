import { upperFirst } from '../../../foundation/upperFirst.ts';
import type { RunFactKind, RunState } from '../../../records/bench.ts';
import { told } from '../../words/told.ts';

const shownFacts: readonly RunFactKind[] = [
  'gap-too-long',
  'contact-short',
  'contact-long',
  'trouble',
  'not-laid',
  'not-in-plan',
];

/** What was not as planned and a printer should see, each once, oldest first. */
export function shownFactWords(facts: RunState['facts']): readonly string[] {
  const those = facts.filter(({ fact }) => shownFacts.includes(fact));
  return [
    ...new Set(
      those.map(({ words }) => {
        const sentence = told(words);
        return upperFirst(sentence);
      }),
    ),
  ];
}
