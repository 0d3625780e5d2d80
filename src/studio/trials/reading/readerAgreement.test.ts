import { expect, it } from 'vitest';
import type { BlindSitting, Hold, PatchFinding, TestStoneReading } from '../../../records/patchReading.ts';
import { readerAgreements } from './readerAgreement.ts';

const told: readonly Hold[] = ['held', 'held', 'weak', 'lost', 'filled', 'held'];

function eye(reader: string, answers: readonly (Hold | null)[]): BlindSitting {
  return {
    id: reader,
    print: 'p',
    reader,
    seed: 1,
    startedAt: '2026-03-01T00:00:00Z',
    order: [],
    answers: answers.map((hold, index) => ({ patch: `A${index}`, hold, at: '2026-03-01T00:00:00Z' })),
  };
}

const camera = {
  prints: [
    {
      print: 'p',
      patches: told.map((hold, index) => ({ patch: `A${index}`, camera: { hold } }) as PatchFinding),
    },
  ],
} as unknown as TestStoneReading;

it('compares every pair of readings on the patches that both told', () => {
  const same = eye('J.O.', told);
  const other = eye('P.R.', [...told.slice(0, 4), 'held', null]);
  const agreements = readerAgreements([same, other], camera);
  expect(agreements.map(({ first, second, patches, alike }) => [first, second, patches, alike])).toEqual([
    ['the camera', 'J.O.', 6, 6],
    ['the camera', 'P.R.', 5, 4],
    ['J.O.', 'P.R.', 5, 4],
  ]);
  expect(agreements[0]!.kappa?.kappa).toBeCloseTo(1, 12);
  expect(agreements[1]!.kappa!.kappa).toBeLessThan(1);
});

it('an answer that was taken back counts no more', () => {
  const sitting = eye('J.O.', ['lost']);
  const again = { ...sitting, answers: [...sitting.answers, { ...sitting.answers[0]!, hold: null }] };
  expect(readerAgreements([again], camera)).toEqual([]);
});
