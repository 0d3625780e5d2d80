import type { StrengthRule } from '../../records/medium.ts';
import { say } from '../words/say.ts';

/** What a medium asks for, as one of a list: a strength, or that the deposit or a test decides. */
export type RuleChoice = (typeof ruleChoices)[number][0];

export const ruleChoices = [
  ['none', say('nothing known: test a patch first')],
  ['by-deposit', say('what its deposit asks for: light, middle or dark')],
  ['ground', say('the etch of bare ground')],
  ['scant', say('the etch for media with little or no grease')],
  ['light', say('the light etch')],
  ['middle', say('the middle etch')],
  ['dark', say('the dark etch')],
] as const;

/** The rule of a choice. */
export function ruleOfChoice(choice: RuleChoice): StrengthRule {
  if (choice === 'none') return { kind: 'none' };
  if (choice === 'by-deposit') return { kind: 'by-deposit', otherwise: null };
  return { kind: 'fixed', strength: choice };
}

/** The choice that says a rule in words; a fallback for a missing deposit is said behind it. */
export function ruleWords(rule: StrengthRule): string {
  const choice = rule.kind === 'fixed' ? rule.strength : rule.kind;
  const words = ruleChoices.find(([each]) => each === choice)![1];
  const otherwise = rule.kind === 'by-deposit' ? rule.otherwise : null;
  return otherwise ? say('{words}; where none is known, {otherwise}', { words, otherwise }) : words;
}

/**
 * An id from a name: lower case letters, figures and hyphens, accents taken off.
 * @returns '' where nothing of the name can stand in an id.
 */
export function mediumIdOf(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 90);
}
