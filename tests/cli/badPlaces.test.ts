import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';
import { aBench, type Bench, expectFailure, expectRefusedInput, pairWords, stonetone } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

type Case = readonly [string, string, FailureCode, RegExp];

const stoneCorners: readonly Case[] = [
  [
    'crossed',
    '234,137 1402,141 170,1008 1404,1062',
    'corners-crossed',
    /stone photograph.*\(stone\.corners\)/,
  ],
  ['folded inward', '234,137 1402,141 600,500 170,1008', 'corners-crossed', /folds inward/],
  [
    'outside the picture',
    '234,137 1402,141 2404,1062 170,1008',
    'corners-outside',
    /Corner 3 \(bottom right\).*1633 x 1225 px/,
  ],
  ['at negative places', '-234,137 1402,141 1404,1062 170,1008', 'corners-outside', /Corner 1 \(top left\)/],
  ['nearly on one line', '100,100 500,301 900,500 1300,701', 'corners-collinear', /one line/],
  ['all the same', '100,100 100,100 100,100 100,100', 'corners-collinear', /one line/],
  ['anticlockwise', '234,137 170,1008 1404,1062 1402,141', 'corners-anticlockwise', /anticlockwise/],
  ['three', '234,137 1402,141 1404,1062', 'corners-malformed', /\(--stone-corners\)/],
  ['five', '234,137 1402,141 1404,1062 170,1008 9,9', 'corners-malformed', /four points/],
  ['words', 'here there and everywhere', 'corners-malformed', /four points/],
  ['half a point', '234,137 1402,141 1404, 170,1008', 'corners-malformed', /four points/],
  ['endless numbers', '234,137 1402,141 Infinity,1062 170,1008', 'corners-malformed', /four points/],
  ['nothing', '', 'corners-malformed', /four points/],
];

const proofCorners: readonly Case[] = [
  [
    'crossed',
    '1357,178 260,204 1359,954 313,1039',
    'corners-crossed',
    /proof photograph.*\(proof\.corners\)/,
  ],
  [
    'outside the picture',
    '1357,178 260,204 313,1039 1358,5000',
    'corners-outside',
    /Corner 4 \(bottom left\)/,
  ],
  ['malformed', '1357;178 260;204 313;1039 1358;954', 'corners-malformed', /\(--proof-corners\)/],
];

describe('corners that cannot be used', () => {
  it.each(stoneCorners)('stone corners %s', async (_, corners, code, mentions) => {
    await expectRefusedInput(bench, pairWords('measured', { 'stone-corners': corners }), code, mentions);
  });

  it.each(proofCorners)('print corners %s', async (_, corners, code, mentions) => {
    await expectRefusedInput(bench, pairWords('measured', { 'proof-corners': corners }), code, mentions);
  });
});

describe('sizes that cannot be used', () => {
  it.each([
    ['one number', '300', /--size/],
    ['words', 'A3', /two numbers/],
    ['nothing', '', /two numbers/],
    ['a zero', '0x300', /longer than nothing/],
    ['a minus', '-400x300', /two numbers/],
    ['inches, by the look of it', '4x3', /shorter than 10 mm/],
    ['a wall', '4000x3000', /longer than 3000 mm/],
    ['width and height swapped', '300x400', /times as wide as high/],
  ])('%s', async (_, size, mentions) => {
    await expectRefusedInput(bench, pairWords('measured', { size }), 'size-invalid', mentions);
  });
});

describe('arguments that cannot be used', () => {
  it.each(['stone', 'proof', 'size'])('without --%s', async (name) => {
    await expectRefusedInput(
      bench,
      pairWords('measured', { [name]: null }),
      'argument-missing',
      RegExp(`--${name}`),
    );
  });

  it('without --out', async () => {
    expectFailure(await stonetone('compare', ...pairWords('measured')), 'argument-missing', /--out/);
  });

  it('an unknown one, a word too many, one given twice, one without its value', async () => {
    await expectRefusedInput(
      bench,
      [...pairWords('measured'), '--colour', 'red'],
      'argument-unknown',
      /--colour/,
    );
    await expectRefusedInput(bench, [...pairWords('measured'), 'more.jpg'], 'argument-unknown', /more\.jpg/);
    await expectRefusedInput(
      bench,
      [...pairWords('measured'), '--size', '1x1'],
      'argument-malformed',
      /--size.*twice/,
    );
    expectFailure(await stonetone('compare', '--out'), 'argument-missing', /--out/);
  });

  it('an option in place of a value', async () => {
    const words = [
      'compare',
      '--stone',
      '--proof',
      'print.jpg',
      '--size',
      '400x300',
      '--out',
      bench.path('never'),
    ];
    expectFailure(await stonetone(...words), 'argument-missing', /--stone/);
  });

  it('an output folder that is a file', async () => {
    const out = await bench.write('a file', 'mine');
    const ended = await stonetone('compare', ...pairWords('measured', { out }));
    expectFailure(ended, 'output-unwritable', /a file has that name/);
    expect(ended.status).toBe(2);
  });
});
