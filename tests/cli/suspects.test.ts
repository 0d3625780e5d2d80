import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evidenceSchema } from '../../src/records/evidence.ts';
import type { SuspectsAnswer } from '../../src/records/suspects.ts';
import { aRecord } from '../server/aRecord.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const asked = async (question: unknown) =>
  stonetone('suspects', await bench.write('in.json', JSON.stringify(question)));

async function answered(question: unknown): Promise<SuspectsAnswer> {
  const ended = await asked(question);
  expect(ended.complained).toBe('');
  expect(ended.status).toBe(0);
  return JSON.parse(ended.said) as SuspectsAnswer;
}

const seen = (value: number) => ({ value, deviation: 0.005 });

describe('stonetone suspects', () => {
  it('names suspects from features and the log, with tests and never a verdict', async () => {
    const answer = await answered({
      features: { bareGrey: seen(0.07), bareGrows: seen(0.03) },
      log: { ungummedPause: 40 },
    });
    expect(answer.suspects[0]).toMatchObject({ suspect: 'scum', evidence: 'strong' });
    expect(answer.suspects.map(({ suspect }) => suspect)).toContain('something-else');
    expect(answer.tests[0]).toMatchObject({ test: 'water-wipe', minutes: 2 });
    expect(answer.photograph.question).toMatch(/photograph/);
    expect(answer).not.toHaveProperty('verdict');
  });

  it('takes outcomes of tests', async () => {
    const question = {
      features: { bareGrey: seen(0.07) },
      outcomes: [{ test: 'water-wipe', outcome: 'yes' }],
    };
    expect((await answered(question)).suspects[0]!.suspect).toBe('tint');
  });

  it('reads comparisons: records, and folders beside the question', async () => {
    const cells = (grey: number) => ({
      columns: 10,
      rows: 10,
      cellMm: 4,
      drawn: Array(100).fill(0),
      printed: Array(100).fill(Math.round(500 * grey)),
    });
    const evidence = (grey: number) => ({
      schema: evidenceSchema,
      engine: 'a stand-in',
      travel: 'down',
      features: { bareGrey: { value: grey, deviation: 0.004, note: null } },
      cells: cells(grey),
    });
    const record = { ...aRecord('ok', [20, 20]), evidence: evidence(0.05) };
    const folder = join(await bench.write('later.txt', ''), '..', 'later');
    await mkdir(folder, { recursive: true });
    await writeFile(join(folder, 'comparison.json'), JSON.stringify(aRecord('ok', [20, 20])));
    await writeFile(join(folder, 'evidence.json'), JSON.stringify(evidence(0.09)));
    const answer = await answered({ comparisons: [record, 'later'] });
    expect(answer.seen.map(({ feature }) => feature)).toEqual(
      expect.arrayContaining(['bareGrey', 'bareGrows']),
    );
    expect(['tint', 'scum']).toContain(answer.suspects[0]!.suspect);
    const three = [0.05, 0.07, 0.09].map((grey) => ({
      ...aRecord('ok', [20, 20]),
      evidence: evidence(grey),
    }));
    const series = await answered({ comparisons: three });
    expect(series.seen.find(({ feature }) => feature === 'bareGrows')!.words).toMatch(/over 3 pulls, 1 to 3/);
    const alone = await answered({ comparisons: [aRecord('ok', [20, 20])] });
    expect(alone.warnings.join()).toMatch(/no evidence\.json/);
    expect((await answered({ comparisons: [aRecord('unmirrored', [20, 20])] })).warnings.join()).toMatch(
      /refused/,
    );
  });

  it('refuses what is no question, with the place', async () => {
    expectFailure(await asked({ features: { colour: 3 } }), 'suspects-malformed', /colour|no feature/);
    expectFailure(await asked({}), 'suspects-malformed', /give features or comparisons/);
    expectFailure(
      await asked({ features: {}, outcomes: [{ test: 'water-wipe', outcome: 'maybe' }] }),
      'suspects-malformed',
      /outcome/,
    );
    expectFailure(await asked({ comparisons: ['nowhere'] }), 'file-missing', /nowhere/);
  });
});
