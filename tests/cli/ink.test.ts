import { afterAll, beforeAll, expect, it } from 'vitest';
import type { InkAnswer } from '../../src/records/inkAnswer.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const asked = async (question: unknown) =>
  stonetone('ink', await bench.write('in.json', JSON.stringify(question)));

it('says where to start from and how many grams', async () => {
  const ended = await asked({ areasCm2: { light: 0, middle: 400, dark: 0 }, edition: 15 });
  expect([ended.status, ended.complained]).toEqual([0, '']);
  const answer = JSON.parse(ended.said) as InkAnswer;
  expect(answer).toMatchObject({ parts: { soft: 70, stiff: 30 }, proofsGrams: null, stiffness: null });
  expect(answer.editionGrams).toMatchObject({ low: 30.6, high: 61.2 });
});

it('names what is wrong with a question', async () => {
  expectFailure(await asked({ areasCm2: { light: -1 } }), 'ink-malformed');
  expectFailure(await asked({}), 'ink-malformed');
  expectFailure(await stonetone('ink'), 'argument-missing');
});
