import { expect, it } from 'vitest';
import type { HoldObservation } from '../../../records/knownHolds.ts';
import { knownHolds } from './knownHolds.ts';

function seen(stones: number, etch: string, hold: HoldObservation['hold'], each = 3): HoldObservation[] {
  return Array.from({ length: stones * each }, (_, k) => ({
    stone: `S-${(k % stones) + 1}`,
    from: k % stones < 2 ? ('test-stone' as const) : ('work' as const),
    strip: `${etch} ${k}`,
    medium: 'crayon #2',
    etch,
    hold,
  }));
}

const advice = {
  table: 'tannic',
  row: 'gum and tannic 1:1',
  basis: 'common practice',
  sources: [
    { source: 'one', advice: 'stronger' },
    { source: 'another', advice: 'weaker' },
  ],
  choice: null,
};

it('counts stones, not places, and hatches by how sure that is', () => {
  const known = knownHolds(
    [...seen(6, 'gum and tannic 1:1', 'held'), ...seen(3, 'gum', 'lost'), ...seen(1, 'acid', 'held', 9)],
    () => advice,
  );
  expect(known).toMatchObject({ stones: 6, etches: ['acid', 'gum', 'gum and tannic 1:1'] });
  const [{ holds, found }] = known.media as [(typeof known.media)[number]];
  const by = new Map(holds.map((one) => [one.etch, one]));
  expect(by.get('gum and tannic 1:1')).toMatchObject({
    verdict: 'holds',
    certainty: 'sure',
    testStones: 2,
    works: 4,
  });
  expect(by.get('gum')).toMatchObject({ verdict: 'open', certainty: 'some' });
  // Nine places of one stone bear out nothing about another.
  expect(by.get('acid')!.verdict).not.toBe('holds');
  expect(by.get('acid')).toMatchObject({ certainty: 'little' });
  expect(found).toMatch(
    /gum and tannic 1:1 is borne out\. Sources disagree .*in this room the table’s stands/,
  );
});

it('draws a share towards its medium as stated, which can be done by hand', () => {
  const known = knownHolds([...seen(2, 'a', 'held', 1), ...seen(2, 'b', 'lost', 1)], () => null);
  const [a, b] = known.media[0]!.holds;
  // The medium: (2 held + 0.5) of (4 + 1) = 0.5; under a (2 + 2 · 0.5) of (2 + 2).
  expect(a!.pooled).toBeCloseTo(0.75, 9);
  expect(b!.pooled).toBeCloseTo(0.25, 9);
  expect(known.media[0]!.found).toMatch(/no rule for crayon #2: test a patch first/);
});

it('knows nothing of nothing', () => {
  expect(knownHolds([], () => null)).toMatchObject({ media: [], etches: [], stones: 0 });
});
