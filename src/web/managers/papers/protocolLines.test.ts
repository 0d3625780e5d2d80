import { expect, it } from 'vitest';
import type { ProtocolMaterial, ProtocolStage, WorkProtocol } from '../../../records/workProtocol.ts';
import { spanWords, timeWords } from '../../../studio/papers/paperWords.ts';
import { protocolParts, protocolsBeside } from './protocolLines.ts';

const gum: ProtocolMaterial = {
  name: 'Gum arabic',
  ml: 20,
  drops: null,
  grams: null,
  mlPer100Cm2: 6.04,
  gramsPerLitre: null,
  pH: 4.2,
  gum: null,
};
const stage: ProtocolStage = {
  stage: 'washout',
  name: 'Washout',
  state: 'done',
  startedAt: '2026-03-04T09:00:00.000Z',
  expected: null,
  spent: { seconds: 90, low: 88, high: 92, how: 'measured', oneClock: true },
  differenceSeconds: null,
};
const protocol = {
  stone: { name: 'S-01', widthMm: 400, heightMm: 500, colour: '' },
  table: null,
  people: 2,
  filmMm: null,
  materials: [gum],
  etches: [],
  poured: [],
  secondEtches: [],
  stages: [stage],
  picked: [],
  comparisons: [],
  series: null,
} as unknown as WorkProtocol;

const linesOf = (one: WorkProtocol, name: string) =>
  protocolParts(one)
    .find((part) => part.name === name)!
    .lines.map(({ label, value }) => [label, value]);

it('says amounts with what is stated of them, and leaves unsaid what is not', () => {
  expect(linesOf(protocol, 'Materials of the first etch')).toEqual([
    ['Gum arabic', '20 ml made ready, 6.0 ml on 100 cm², pH 4.2'],
  ]);
  expect(linesOf(protocol, 'Stone and plan')).toEqual([
    ['Stone', '400 × 500 mm'],
    ['Its colour', null],
    ['Etch table', null],
    ['People planned for', '2'],
    ['Film of etch', null],
  ]);
  expect(linesOf(protocol, 'Stages')).toEqual([
    ['Washout', `${spanWords(stage.spent)}, from ${timeWords(stage.startedAt)}`],
  ]);
});

it('lays two beside each other: what one lacks is said as not planned or as not recorded, never as equal', () => {
  const ours = { ...protocol, materials: [{ ...gum, name: 'Tannic solution', pH: null }], stages: [] };
  const beside = protocolsBeside(protocol, ours);
  const of = (name: string) =>
    beside
      .find((part) => part.name === name)!
      .lines.map(({ label, theirs, ours: own }) => [label, theirs, own]);
  expect(of('Materials of the first etch')).toEqual([
    ['Gum arabic', '20 ml made ready, 6.0 ml on 100 cm², pH 4.2', 'none planned'],
    ['Tannic solution', 'none planned', '20 ml made ready, 6.0 ml on 100 cm²'],
  ]);
  expect(of('Stages')).toEqual([
    ['Washout', `${spanWords(stage.spent)}, from ${timeWords(stage.startedAt)}`, 'not recorded'],
  ]);
  expect(of('Stone and plan').map(([label]) => label)).toEqual(['Stone', 'People planned for']);
  expect(beside[0]!.untold).toEqual(['Its colour', 'Etch table', 'Film of etch']);
});
