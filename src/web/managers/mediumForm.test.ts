import { describe, expect, it } from 'vitest';
import { mediumIdOf, ruleChoices, ruleOfChoice, ruleWords } from './mediumForm.ts';

describe('a medium of the studio’s own', () => {
  it('takes its id from its name', () => {
    expect(mediumIdOf('River crayon, №2')).toBe('river-crayon-no2');
    expect(mediumIdOf('  Fusain gras (été) ')).toBe('fusain-gras-ete');
    expect(mediumIdOf('石墨')).toBe('');
  });

  it('says each rule in the words it was chosen by', () => {
    for (const [choice, words] of ruleChoices) expect(ruleWords(ruleOfChoice(choice))).toBe(words);
    expect(ruleWords({ kind: 'by-deposit', otherwise: 'middle' })).toMatch(/where none is known, middle$/);
  });
});
