import { expect, it } from 'vitest';
import type { TestStoneFindings } from '../../../records/testStoneAnswer.ts';
import { answerTestStone } from './answerTestStone.ts';
import { etchAndMedium, foundByHand, inventedTrial } from './trials.testing.ts';

/** Drawn by hand before any design: every medium once, each zone with an etch of its own. */
const byHand: TestStoneFindings = {
  stone: 'T-1',
  sizeMm: [300, 400],
  factors: etchAndMedium,
  prints: 3,
  findings: foundByHand(
    [
      ['crayon #4', 'held', 0.5],
      ['thin wash', 'lost', 0.05],
    ],
    [
      ['crayon #1', 'held', 0.52],
      ['solid', 'filled', 0.97],
    ],
    'ruling',
  ),
};

it('a stone made by hand is told plainly what it can not tell', () => {
  const answer = answerTestStone([byHand], []);
  expect(answer.words[0]).toMatch(/came only with .*no cause can be assigned between etch and medium/);
  expect(answer.holds.map(({ name, verdict }) => [name, verdict])).toEqual([
    ['gum over crayon #4', 'open'],
    ['gum over thin wash', 'open'],
    ['tannic over crayon #1', 'open'],
    ['tannic over solid', 'open'],
  ]);
  // A guide line that vanished is no loss.
  expect(answer.holds.some(({ name }) => name.includes('ruling'))).toBe(false);
  expect(answer.contrasts).toEqual([]);
  expect(answer.odds).toEqual([]);
  expect(answer.tones.every(({ low, high }) => low === null && high === null)).toBe(true);
  const codes = answer.audit.map(({ code }) => code);
  expect(codes).toEqual(
    expect.arrayContaining([
      'never-apart',
      'no-replicate',
      'one-stone',
      'no-control',
      'prints-not-replicates',
    ]),
  );
  expect(answer.openQuestions.every(({ question, test }) => question.length > 0 && test.length > 0)).toBe(
    true,
  );
  expect(answer.openQuestions[0]!.test).toMatch(/Try gum and tannic each with crayon #4 and with crayon #1/);
});

it('six stones that all held bear out that it holds, and say how surely', () => {
  const stones = inventedTrial({
    seed: 5,
    stones: 6,
    etches: ['None', 'gum'],
    media: ['crayon', 'wash'],
    repeats: 1,
    holds: (etch) => (etch === 'gum' ? 50 : -50),
    scatter: 0,
    tone: (etch) => (etch === 'gum' ? 0 : -0.4),
  });
  const { holds, words, contrasts, tests, odds, residuals } = answerTestStone(stones, []);
  expect(holds.map(({ treatment, verdict }) => [treatment.etch, verdict])).toEqual(
    expect.arrayContaining([
      ['gum', 'holds'],
      ['None', 'fails'],
    ]),
  );
  const crayon = holds.find(({ name }) => name === 'gum over crayon')!;
  expect(crayon.share).toMatchObject({ unit: 'stone', units: 6, unitsHeld: 6 });
  // 6 of 6: R 4.2.2, binom.test(6, 6)$conf.int 0.5407419, one-sided 0.05^(1/6) = 0.6069622.
  expect(crayon.share!.exactLow).toBeCloseTo(0.5407419, 6);
  expect(crayon.share!.least).toBeCloseTo(0.6069622, 6);
  expect(words.join(' ')).toMatch(/Gum over crayon holds: 6 of 6 stones/);
  const etch = contrasts.find(({ term }) => term === 'etch')!;
  expect(etch).toMatchObject({ level: 'gum', against: 'None' });
  expect(etch.low).toBeGreaterThan(0.2);
  expect(tests.find(({ factor }) => factor === 'etch')).toMatchObject({ unit: 'strip', denDf: 5 });
  expect(odds.find(({ factor }) => factor === 'etch')!.low).toBeGreaterThan(1);
  expect(residuals).toHaveLength(24);
});

it('an etch that lay too long on all of its strips has no cause', () => {
  const stones = inventedTrial({
    seed: 11,
    stones: 4,
    etches: ['None', 'gum'],
    media: ['crayon', 'wash'],
    repeats: 1,
    holds: () => 1,
    scatter: 0,
    tone: (etch) => (etch === 'gum' ? -0.3 : 0),
  });
  const late = stones.map(({ stone, findings }) => ({
    what: 'Etch lay 95 s longer',
    stone,
    patches: findings.filter(({ treatment }) => treatment.etch === 'gum').map(({ patch }) => patch),
  }));
  expect(answerTestStone(stones, []).contrasts.some(({ term }) => term === 'etch')).toBe(true);
  const after = answerTestStone(stones, late);
  expect(after.contrasts.some(({ term }) => term === 'etch')).toBe(false);
  expect(after.words[0]).toMatch(
    /Etch lay 95 s longer: all of gum and nothing else. No cause can be assigned/,
  );
});

it('an empty stone has nothing to say and does not break', () => {
  const answer = answerTestStone([{ ...byHand, findings: [] }], []);
  expect(answer).toMatchObject({ holds: [], tones: [], contrasts: [], audit: [], residuals: [] });
});
