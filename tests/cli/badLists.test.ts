import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, it } from 'vitest';
import type { FailureCode } from '../../src/foundation/failureRegistry.ts';
import { aBench, type Bench, expectRefusedInput, pairWords, picture } from './stonetone.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await aBench();
});
afterAll(() => bench.clear());

const square = [
  [20, 20],
  [60, 20],
  [60, 60],
  [20, 60],
];
const zone = (more: object = {}) => ({
  id: 'reeds',
  name: 'Reeds',
  medium: 'pen',
  polygonMm: square,
  ...more,
});
const outline = (...polygonMm: number[][]) => [zone(), zone({ id: 'sky', polygonMm })];

const badZones: readonly (readonly [string, unknown, FailureCode, RegExp])[] = [
  [
    'outside the rectangle',
    outline([20, 20], [420, 20], [60, 60]),
    'zone-outside',
    /sky.*400 x 300 mm.*\(zones\[1\]\.polygonMm\[1\]\)/,
  ],
  [
    'at negative places',
    outline([-20, 20], [40, 20], [60, 60]),
    'zone-outside',
    /\(zones\[1\]\.polygonMm\[0\]\)/,
  ],
  [
    'crossing itself',
    outline([20, 20], [60, 60], [60, 20], [20, 60]),
    'zone-self-crossing',
    /sky.*\(zones\[1\]\.polygonMm\)/,
  ],
  ['the same id twice', [zone(), zone()], 'zone-duplicate', /reeds.*\(zones\[1\]\.id\)/],
  ['on one line', outline([20, 20], [40, 40], [60, 60]), 'zone-degenerate', /sky.*\(zones\[1\]\.polygonMm\)/],
  ['one place three times', outline([20, 20], [20, 20], [20, 20]), 'zone-degenerate', /sky/],
  ['two points', outline([20, 20], [60, 20]), 'zones-malformed', /\[1\]\.polygonMm/],
  [
    'a point of three numbers',
    outline([20, 20, 1], [60, 20], [60, 60]),
    'zones-malformed',
    /\[1\]\.polygonMm\[0\]/,
  ],
  [
    'words for numbers',
    [zone({ polygonMm: [['a', 'b'], ...square] })],
    'zones-malformed',
    /\[0\]\.polygonMm\[0\]\[0\]/,
  ],
  ['no id', [{ ...zone(), id: undefined }], 'zones-malformed', /\[0\]\.id/],
  ['an empty id', [zone({ id: '' })], 'zones-malformed', /\[0\]\.id/],
  ['an unknown deposit', [zone({ deposit: 'thick' })], 'zones-malformed', /\[0\]\.deposit/],
  ['no list', { zones: [zone()] }, 'zones-malformed', /./],
  ['nothing', null, 'zones-malformed', /./],
];

describe('zones that cannot be used', () => {
  it.each(badZones)('%s', async (_, content, code, mentions) => {
    const zones = await bench.write('zones.json', JSON.stringify(content));
    await expectRefusedInput(bench, pairWords('measured', { zones }), code, mentions);
  });

  it.each([
    ['broken JSON', '[{"id": "a", '],
    ['an empty file', ''],
    ['a photograph', readFileSync(picture('measured-print.jpg')).subarray(0, 2000)],
  ])('%s', async (_, content) => {
    const zones = await bench.write('zones.json', content);
    await expectRefusedInput(bench, pairWords('measured', { zones }), 'zones-malformed', /not JSON/);
  });
});

const chip = (more: object = {}) => ({
  photo: 'stone',
  name: 'grey 0.32',
  polygonPx: [
    [1500, 300],
    [1530, 300],
    [1530, 330],
  ],
  reflectance: 0.32,
  ...more,
});

describe('chips that cannot be used', () => {
  it.each<readonly [string, unknown, FailureCode, RegExp]>([
    [
      'outside the photograph',
      [
        chip({
          polygonPx: [
            [1500, 300],
            [1700, 300],
            [1530, 330],
          ],
        }),
      ],
      'chip-outside',
      /grey 0\.32.*stone.*\(chips\[0\]\.polygonPx\)/,
    ],
    [
      'outside the print',
      [
        chip(),
        chip({
          photo: 'proof',
          polygonPx: [
            [-9, 300],
            [10, 300],
            [10, 330],
          ],
        }),
      ],
      'chip-outside',
      /proof.*\(chips\[1\]\.polygonPx\)/,
    ],
    ['reflecting more than all', [chip({ reflectance: 90 })], 'chips-malformed', /\[0\]\.reflectance/],
    ['reflecting nothing', [chip({ reflectance: 0 })], 'chips-malformed', /\[0\]\.reflectance/],
    ['on no photograph', [chip({ photo: 'print' })], 'chips-malformed', /\[0\]\.photo/],
    [
      'of two points',
      [
        chip({
          polygonPx: [
            [1, 1],
            [2, 2],
          ],
        }),
      ],
      'chips-malformed',
      /\[0\]\.polygonPx/,
    ],
    ['in no list', chip(), 'chips-malformed', /./],
  ])('%s', async (_, content, code, mentions) => {
    const chips = await bench.write('chips.json', JSON.stringify(content));
    await expectRefusedInput(bench, pairWords('measured', { chips }), code, mentions);
  });

  it('broken JSON', async () => {
    const chips = await bench.write('chips.json', '{');
    await expectRefusedInput(bench, pairWords('measured', { chips }), 'chips-malformed', /not JSON/);
  });
});
