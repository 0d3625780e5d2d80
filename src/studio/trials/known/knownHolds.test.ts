import { expect, it } from 'vitest';
import { normalDraw, seededRandom } from '../../../foundation/random.ts';
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
  // Variance 0.75 · 0.25 / (2 + 1) of its own, (2 / 4)² · 0.25 / (5 + 1) of the medium's: beta of size 1.571, 1.178 and 0.393
  // (R 4.2.2, qbeta).
  expect(a!.pooledLow).toBeCloseTo(0.1005869425, 6);
  expect(a!.pooledHigh).toBeCloseTo(0.9999322096, 6);
  expect(known.media[0]!.found).toMatch(/no rule for crayon #2: test a patch first/);
});

/** The mean share over stones whose log odds scatter about `odds`. */
function meanShare(odds: number, scatter: number): number {
  const places = Array.from({ length: 161 }, (_, k) => (k - 80) / 20);
  const weights = places.map((z) => Math.exp((-z * z) / 2));
  const sum = places.reduce((all, z, k) => all + weights[k]! / (1 + Math.exp(-odds - scatter * z)), 0);
  return sum / weights.reduce((all, weight) => all + weight, 0);
}

it('the interval of a pooled share holds the truth as often as it says, stones differing', () => {
  let [inside, all] = [0, 0];
  for (let room = 0; room < 500; room++) {
    const random = seededRandom(7 * room + 5);
    const odds = new Map<string, number>();
    for (const medium of ['a', 'b', 'c']) {
      const own = 0.5 + 1.5 * normalDraw(random);
      for (const etch of ['x', 'y']) odds.set(medium + etch, own + 1.2 * normalDraw(random));
    }
    const seenHere: HoldObservation[] = [];
    for (let stone = 0; stone < 5; stone++) {
      const ofStone = normalDraw(random);
      for (const etch of ['x', 'y']) {
        const ofStrip = ofStone + 0.7 * normalDraw(random);
        for (const medium of ['a', 'b', 'c', 'a', 'b', 'c']) {
          const held = random() < 1 / (1 + Math.exp(-odds.get(medium + etch)! - ofStrip));
          const hold = held ? 'held' : 'lost';
          seenHere.push({ stone: `S-${stone}`, from: 'test-stone', strip: etch, medium, etch, hold });
        }
      }
    }
    for (const { medium, holds } of knownHolds(seenHere, () => null).media)
      for (const { etch, pooledLow, pooledHigh } of holds) {
        const truth = meanShare(odds.get(medium + etch)!, Math.hypot(1, 0.7));
        inside += Number(pooledLow <= truth && truth <= pooledHigh);
        all += 1;
      }
  }
  expect(inside / all).toBeGreaterThanOrEqual(0.92);
  expect(inside / all).toBeLessThanOrEqual(0.98);
});

it('knows nothing of nothing', () => {
  expect(knownHolds([], () => null)).toMatchObject({ media: [], etches: [], stones: 0 });
});
