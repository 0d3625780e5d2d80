import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EditionPlan } from '../../src/records/editionPlan.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const asked = async (question: unknown) =>
  stonetone('edition', await bench.write('in.json', JSON.stringify(question)));

describe('stonetone edition', () => {
  it.each([
    [5, 15],
    [30, 48],
  ])('an edition of %i takes %i sheets', async (size, sheets) => {
    const ended = await asked({ size });
    expect(ended).toMatchObject({ complained: '', status: 0 });
    expect((JSON.parse(ended.said) as EditionPlan).sheetsInAll).toBe(sheets);
  });

  it('says what is wrong, and where', async () => {
    expectFailure(await asked({ size: 0 }), 'edition-malformed', /size|1/);
    const spoiled = { size: 5, past: { impressions: 3, spoiled: 4 } };
    expectFailure(await asked(spoiled), 'edition-malformed', /more spoiled than printed/);
    expectFailure(await stonetone('edition'), 'argument-missing', /in\.json/);
    expectFailure(await stonetone('edition', bench.path('none.json')), 'file-missing', /none\.json/);
  });
});
