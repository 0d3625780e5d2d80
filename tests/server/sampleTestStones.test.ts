import { expect, it } from 'vitest';
import type { TestStoneReading } from '../../src/records/patchReading.ts';
import type { TestStone } from '../../src/records/testStone.ts';
import type { TestStoneAnswer } from '../../src/records/testStoneAnswer.ts';
import type { TrialDesign } from '../../src/records/trialDesign.ts';
import { sampleStudio } from '../../src/sample/saltreach/sampleStudio.ts';
import { sampleTestStones as testStones } from '../../src/sample/saltreach/testStone/sampleTestStones.ts';
import { studioUnderTest } from './studioUnderTest.ts';

/** There is no such module: whatever were measured would fail. */
const measuringModule = new URL('./nothing is measured.ts', import.meta.url);

it('a fresh data folder has a read test stone that answers, and one that is planned', {
  timeout: 120_000,
}, async () => {
  const studio = sampleStudio();
  const first = await studioUnderTest({ studio, testStones, measuringModule });
  const path = `/api/test-stones/${testStones.readId}`;
  let reading: TestStoneReading | null = null;
  while (!reading || reading.findings.length === 0) {
    await new Promise((resolve) => setTimeout(resolve, 20));
    const found = await first.call(`${path}/reading`);
    if (found.ok) reading = (await found.json()) as TestStoneReading;
  }
  const { testStones: all } = await first.json<{ testStones: TestStone[] }>('/api/test-stones');
  expect(all.map(({ name, sample }) => [name, sample]).toSorted()).toEqual([
    ['T-1', true],
    ['T-2', true],
    ['T-3', true],
  ]);
  expect(reading.findings).toHaveLength(24);
  // What the demo was made to show: strong etch on light crayon, gum alone on dark.
  const became = (etch: string, medium: string) =>
    reading.findings
      .filter(({ treatment }) => treatment.etch === etch && treatment.medium === medium)
      .map(({ hold }) => hold);
  expect(became('tannic solution', 'crayon #5')).toEqual(['lost', 'lost']);
  expect(became('gum alone', 'crayon #1')).toEqual(['filled', 'filled']);
  expect(became('gum and tannic 1:1', 'crayon #1')).toEqual(['held', 'held']);
  const answer = await first.json<TestStoneAnswer>(`${path}/answer`);
  // Two strips an etch: six less three.
  const ofEtch = answer.tests.find(({ factor }) => factor === 'etch');
  expect(ofEtch).toMatchObject({ unit: 'strip', df: 2 });
  expect(ofEtch!.denDf).toBeCloseTo(3, 6);
  expect(answer.words.join(' ')).toMatch(/Gum alone prints .* darker than gum and tannic 1:1/);
  const designed = await first.send<TrialDesign>('POST', '/api/trial-designs', {
    stone: { widthMm: 300, heightMm: 400 },
    sub: { name: 'medium', levels: ['crayon #3', 'crayon #1'] },
  });
  // Six strips of one stone tell patches and strips, and nothing of stones.
  expect(designed.body.room).toMatchObject({ stones: 1, remembered: ['stone'] });
  expect(designed.body.power[0]!.of).toBe('this room');
});
