import { expect, it } from 'vitest';
import type { ComparisonRequest } from '../../records/comparisonEntry.ts';
import { resultKey } from './resultKey.ts';

const request: ComparisonRequest = {
  title: 'Low Water',
  sizeMm: [300, 400],
  stone: { photograph: 's', corners: null, repeat: null, flat: null },
  proof: { photograph: 'p', corners: null, repeat: null, flat: null },
  zones: [{ id: 'a', name: 'Moon', medium: 'crayon', polygonMm: [[0, 0]] }],
  chips: [],
};

it('changes with all that the result depends on, and with nothing else', () => {
  const key = resultKey(request, '1');
  expect(key).toMatch(/^[0-9a-f]{64}$/);
  expect(resultKey({ ...request, title: 'other' }, '1')).toBe(key);
  const { polygonMm, medium, name, id } = request.zones[0]!;
  expect(resultKey({ ...request, zones: [{ polygonMm, medium, name, id }] }, '1')).toBe(key);
  const others: ComparisonRequest[] = [
    { ...request, sizeMm: [400, 300] },
    { ...request, stone: request.proof, proof: request.stone },
    { ...request, stone: { ...request.stone, repeat: 'r' } },
    { ...request, stone: { ...request.stone, flat: 'r' } },
    { ...request, zones: [] },
    { ...request, cornersInOrder: true },
    { ...request, zones: [{ ...request.zones[0]!, intention: 'guide' }] },
  ];
  const keys = [key, resultKey(request, '2'), ...others.map((other) => resultKey(other, '1'))];
  expect(new Set(keys).size).toBe(keys.length);
});
