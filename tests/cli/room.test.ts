import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';
import type { LiftAnswer, RoomAnswer } from '../../src/records/roomAnswer.ts';
import { aBench, type Bench, expectFailure, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

/** An answer that holds together: the value in its range, a source, words that leave it to others. */
async function answered<T extends RoomAnswer>(...words: readonly string[]): Promise<T> {
  const ended = await stonetone('room', ...words);
  expect(ended.complained).toBe('');
  expect(ended.status).toBe(0);
  const answer = JSON.parse(ended.said) as T;
  expect(answer.range.low).toBeLessThanOrEqual(answer.value);
  expect(answer.range.high).toBeGreaterThanOrEqual(answer.value);
  expect(answer.source).toMatch(/\S/);
  expect(answer.words.at(-1)).toMatch(/Local codes.* come first/);
  expect(ended.said).not.toMatch(/\bsafe\b/i);
  return answer;
}

const lifted = async (question: unknown) => [
  'lift',
  '--json',
  await bench.write('in.json', JSON.stringify(question)),
];
const seldom = { horizontalCm: 40, verticalCm: 75, distanceCm: 25 };

describe('stonetone room', () => {
  it('vapour: the peak as a range, against the limit that was typed', async () => {
    const asked = { ml: 30, gramsPerMl: 0.78, roomM3: 50, airChangesPerHour: 4, limitMgPerM3: 350 };
    const file = await bench.write('vapour.json', JSON.stringify(asked));
    const answer = await answered('vapour', '--json', file);
    expect(answer).toMatchObject({ unit: 'mg/m³', kind: 'vapour' });
    expect(answer.value).toBeCloseTo(468, 9);
    expect(answer.range.high / answer.range.low).toBeCloseTo(10, 9);
    const short = await bench.write('short.json', JSON.stringify({ ml: 30 }));
    expectFailure(await stonetone('room', 'vapour', '--json', short), 'vapour-malformed', /roomM3/);
  });

  it('air: the printed 46 minutes at 6 air changes for 99 %, up to ten times that', async () => {
    const answer = await answered('air', '--air-changes', '6', '--removal', '0.99');
    expect(Math.round(answer.value)).toBe(46);
    expect(answer.range.high / answer.value).toBeCloseTo(10, 9);
    expect(answer.unit).toBe('min');
    expect(answer.words[0]).toMatch(/138 to 461 min/);
  });

  it('settle: rosin of 5 micron over 2 m', async () => {
    const answer = await answered('settle', '--micron', '5', '--density', '1.07', '--metres', '2');
    expect(answer.value).toBeGreaterThan(38);
    expect(answer.value).toBeLessThan(43);
    expect(answer.words.join(' ')).toMatch(/lifts again.*wipe wet.*asthma.*burns/);
  });

  it('lift: a stone of 41.6 kg at arm’s length', async () => {
    const answer = await answered<LiftAnswer>(...(await lifted({ ...seldom, loadKg: 41.6 })));
    expect(answer.value).toBeCloseTo(14.375, 9);
    expect(answer.index!.value).toBeCloseTo(2.894, 3);
    expect(answer.words[0]).toMatch(/not by hand/);
  });

  it('lift: a stone’s mass is a range, without a load only the limit, out of reach nothing', async () => {
    const stone = { widthMm: 400, heightMm: 500, thicknessMm: 80 };
    const ofStone = await answered<LiftAnswer>(...(await lifted({ ...seldom, stone })));
    expect(ofStone.index!.low).toBeLessThan(ofStone.index!.value!);
    const near = { loadDepthCm: 10, verticalCm: 75, distanceCm: 10, coupling: 'good' };
    const limit = await answered<LiftAnswer>(...(await lifted(near)));
    expect([limit.value, limit.index]).toEqual([23, null]);
    const far = await answered<LiftAnswer>(...(await lifted({ ...seldom, horizontalCm: 80, loadKg: 5 })));
    expect([far.value, far.index!.value]).toEqual([0, null]);
    expect(far.words[0]).toMatch(/allows no load/);
  });

  it.each<readonly [string, readonly string[], FailureCode, RegExp]>([
    ['nothing asked', [], 'argument-missing', /air, settle, vapour or lift/],
    ['something else', ['dust'], 'argument-unknown', /dust/],
    ['no air changes', ['air', '--removal', '0.99'], 'argument-missing', /--air-changes/],
    [
      'still air',
      ['air', '--air-changes', '0', '--removal', '0.99'],
      'argument-malformed',
      /--air-changes.*above 0/,
    ],
    [
      'per cent',
      ['air', '--air-changes', '6', '--removal', '99'],
      'argument-malformed',
      /--removal.*below 1/,
    ],
    ['a word', ['air', '--air-changes', 'six', '--removal', '0.9'], 'argument-malformed', /six/],
    [
      'no size',
      ['settle', '--micron', '0', '--density', '1', '--metres', '2'],
      'argument-malformed',
      /--micron/,
    ],
    [
      'no height',
      ['settle', '--micron', '5', '--density', '1', '--metres', '-2'],
      'argument-malformed',
      /--metres/,
    ],
    ['no file', ['lift'], 'argument-missing', /--json/],
  ])('%s', async (_, words, code, mentions) => {
    expectFailure(await stonetone('room', ...words), code, mentions);
  });

  it.each<readonly [string, unknown, RegExp]>([
    ['no height of the hands', { horizontalCm: 40, distanceCm: 25 }, /missing at verticalCm/],
    ['no reach', { verticalCm: 40, distanceCm: 25 }, /horizontalCm or loadDepthCm is needed/],
    [
      'a load twice',
      { ...seldom, loadKg: 5, stone: { widthMm: 9, heightMm: 9, thicknessMm: 9 } },
      /not both/,
    ],
    ['another grip', { ...seldom, coupling: 'firm' }, /good, fair, poor at coupling/],
  ])('lift: %s', async (_, question, mentions) => {
    expectFailure(await stonetone('room', ...(await lifted(question))), 'lift-malformed', mentions);
  });
});
