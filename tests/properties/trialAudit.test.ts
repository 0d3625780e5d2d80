import { describe, expect, test } from 'vitest';
import { type Random, seededRandom } from '../../src/foundation/random.ts';
import type { PatchFinding } from '../../src/records/patchReading.ts';
import type { TestFactor } from '../../src/records/testStone.ts';
import type { AuditCode, TestStoneFindings, TrialDeviation } from '../../src/records/testStoneAnswer.ts';
import { trialPatches } from '../../src/studio/trials/answer/trialPatches.ts';
import {
  etchAndMedium,
  foundPatch,
  inventedTrial,
  shuffled,
} from '../../src/studio/trials/answer/trials.testing.ts';
import { auditTrial } from '../../src/studio/trials/audit/auditTrial.ts';

const etches = ['None', 'gum', 'tannic'];
const media = ['crayon', 'wash', 'pen'];
const studios = 500;

function sound(seed: number, stones = 5): TestStoneFindings[] {
  return inventedTrial({
    seed,
    stones,
    etches,
    media,
    repeats: 2,
    holds: () => 1,
    scatter: 0.5,
    tone: () => 0,
  });
}

function audit(stones: readonly TestStoneFindings[], deviations: readonly TrialDeviation[] = []) {
  return auditTrial(trialPatches(stones), deviations);
}

/** A stone of the given patches, row by row; each row is a strip. */
function stoneOf(
  name: string,
  strips: readonly (readonly Readonly<Record<string, string>>[])[],
  factors: readonly TestFactor[] = etchAndMedium,
): TestStoneFindings {
  const findings = strips.flatMap((own, row) =>
    own.map((treatment, column) =>
      foundPatch({ row, column, strip: `${row + 1}` }, treatment, { hold: 'held', printed: 0.5 }),
    ),
  );
  return { stone: name, sizeMm: [400, 500], factors, findings, prints: 1 };
}

function changed(
  stones: readonly TestStoneFindings[],
  change: (finding: PatchFinding) => PatchFinding | null,
): TestStoneFindings[] {
  return stones.map((stone) => ({
    ...stone,
    findings: stone.findings.map(change).filter((one) => one !== null),
  }));
}

function pick<Item>(items: readonly Item[], random: Random): Item {
  return items[Math.floor(random() * items.length)]!;
}

test('a trial drawn by lot on five stones is told nothing of the kind', () => {
  let alarms = 0;
  for (let seed = 0; seed < studios; seed++)
    alarms += Number(audit(sound(seed)).some(({ weight }) => weight === 'no-cause'));
  // All five stones in one order by lot: once in 1,296 draws.
  expect(alarms / studios).toBeLessThan(0.01);
});

interface Planted {
  readonly stones: readonly TestStoneFindings[];
  readonly deviations?: readonly TrialDeviation[];
  readonly factor: string;
}

const plants: readonly (readonly [string, AuditCode, (random: Random, seed: number) => Planted])[] = [
  [
    'every medium with one etch of its own',
    'never-apart',
    (random) => {
      const pairs = shuffled(media, random).map((medium, k) => ({ etch: etches[k]!, medium }));
      const stones = Array.from({ length: 1 + Math.floor(4 * random()) }, (_, k) =>
        stoneOf(
          `T-${k}`,
          shuffled(pairs, random).map((pair) => [pair, pair]),
        ),
      );
      return { stones, factor: 'medium' };
    },
  ],
  [
    'one medium with one etch only, and that etch with no other',
    'never-apart',
    (random, seed) => {
      const [medium, etch] = [pick(media, random), pick(etches, random)];
      const kept = changed(sound(seed), (finding) =>
        (finding.treatment.medium === medium) === (finding.treatment.etch === etch) ? finding : null,
      );
      return { stones: kept, factor: 'etch' };
    },
  ],
  [
    'three treatments of which two tell the third',
    'jointly-apart',
    (random) => {
      const turn = random() < 0.5;
      const three = [
        { etch: 'gum', medium: 'crayon', powder: 'none' },
        { etch: 'gum', medium: 'wash', powder: 'talc' },
        { etch: turn ? 'tannic' : 'acid', medium: 'crayon', powder: 'talc' },
      ];
      const factors: TestFactor[] = [
        ...etchAndMedium.map(({ name }) => ({ name, givenTo: 'patch' as const })),
        { name: 'powder', givenTo: 'patch' },
      ];
      const strips = () => Array.from({ length: 3 }, () => shuffled(three, random));
      return {
        stones: [stoneOf('T-1', strips(), factors), stoneOf('T-2', strips(), factors)],
        factor: 'powder',
      };
    },
  ],
  [
    'one strip an etch on one stone',
    'no-replicate',
    (_, seed) => ({ stones: sound(seed, 1), factor: 'etch' }),
  ],
  [
    'one stone an etch',
    'no-replicate',
    (random) => ({
      stones: shuffled(etches, random).map((etch, k) =>
        stoneOf(
          `T-${k}`,
          [0, 1, 2].map(() => shuffled(media, random).map((medium) => ({ etch, medium }))),
        ),
      ),
      factor: 'etch',
    }),
  ],
  [
    'half of the media in one strip, half in the other',
    'block-apart',
    (random) => {
      const [etch] = shuffled(etches, random);
      const halves = [
        ['crayon', 'pen'],
        ['wash', 'solid'],
      ].map((half) => shuffled([...half, ...half], random).map((medium) => ({ etch: etch!, medium })));
      return { stones: [stoneOf('T-1', halves)], factor: 'medium' };
    },
  ],
  [
    'strips in one order on every stone',
    'place',
    (random) => {
      const order = shuffled(etches, random);
      const strips = () => order.map((etch) => shuffled(media, random).map((medium) => ({ etch, medium })));
      return { stones: [1, 2, 3].map((k) => stoneOf(`T-${k}`, strips())), factor: 'etch' };
    },
  ],
  [
    'media in one order in every strip',
    'place',
    (random) => {
      const order = shuffled(media, random);
      const strips = () => shuffled(etches, random).map((etch) => order.map((medium) => ({ etch, medium })));
      return { stones: [1, 2, 3].map((k) => stoneOf(`T-${k}`, strips())), factor: 'medium' };
    },
  ],
  [
    'times overrun with one treatment only',
    'one-treatment',
    (random, seed) => {
      const stones = sound(seed, 3);
      const etch = pick(etches, random);
      const deviations = stones.map(({ stone, findings }) => ({
        what: 'Etch lay 95 s longer than planned',
        stone,
        patches: findings.filter(({ treatment }) => treatment.etch === etch).map(({ patch }) => patch),
      }));
      return { stones, deviations, factor: 'etch' };
    },
  ],
  [
    'a strip late, on one stone',
    'one-treatment',
    (random, seed) => {
      const [stone] = sound(seed, 1);
      const strip = pick(['1', '2', '3'], random);
      const patches = stone!.findings.filter((one) => one.strip === strip).map(({ patch }) => patch);
      return {
        stones: [stone!],
        deviations: [{ what: `Strip ${strip} etched 10 min late`, stone: stone!.stone, patches }],
        factor: 'etch',
      };
    },
  ],
  [
    'a strip late, on one of several stones',
    'part-of-treatment',
    (random, seed) => {
      const stones = sound(seed, 4);
      const { stone, findings } = pick(stones, random);
      const strip = pick(['1', '2', '3'], random);
      const patches = findings.filter((one) => one.strip === strip).map(({ patch }) => patch);
      return { stones, deviations: [{ what: 'A strip late', stone, patches }], factor: 'etch' };
    },
  ],
  [
    'patches of one medium that could not be read',
    'unread-unevenly',
    (random, seed) => {
      const medium = pick(media, random);
      const stones = changed(sound(seed), (finding) =>
        finding.treatment.medium === medium && random() < 0.6 ? { ...finding, hold: null } : finding,
      );
      return { stones, factor: 'medium' };
    },
  ],
];

describe('every planted confounding is flagged', () => {
  test.each(plants)('%s: %s', (_, code, plant) => {
    for (let seed = 0; seed < studios; seed++) {
      const { stones, deviations = [], factor } = plant(seededRandom(31 * seed + 7), seed);
      const found = audit(stones, deviations).filter((one) => one.code === code);
      expect(
        found.some(({ factors }) => factors.includes(factor)),
        `seed ${seed}`,
      ).toBe(true);
      const heavy = !['part-of-treatment', 'unread-unevenly'].includes(code);
      if (heavy)
        expect(
          found.every(
            ({ weight, message }) => weight === 'no-cause' && message.includes('o cause can be assigned'),
          ),
          `seed ${seed}`,
        ).toBe(true);
    }
  });

  test('strips of one etch at the head and of the other at the foot lean', () => {
    const [gum, tannic] = ['gum', 'tannic'].map((etch) => media.map((medium) => ({ etch, medium })));
    const found = audit([stoneOf('T-1', [gum!, gum!, tannic!, tannic!])]);
    expect(found.some(({ code, factors }) => code.startsWith('place') && factors.includes('etch'))).toBe(
      true,
    );
  });

  test('prints of one stone, one stone, no control and missing combinations are told', () => {
    const [stone] = sound(3, 1);
    const cut = changed([{ ...stone!, prints: 5 }], ({ treatment, ...rest }) =>
      treatment.etch === 'None' ? null : { ...rest, treatment },
    );
    const codes = audit(cut).map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['prints-not-replicates', 'one-stone', 'no-control']));
    const fewer = changed(sound(4), (finding) =>
      finding.treatment.etch === 'gum' && finding.treatment.medium === 'pen' ? null : finding,
    );
    expect(audit(fewer).map(({ code }) => code)).toContain('cells-missing');
  });

  test('a delay that touched all treatments alike is a note', () => {
    const stones = sound(5);
    const found = audit(stones, [{ what: 'Washout a day late', stone: 'T-2', patches: null }]);
    expect(found.filter(({ code }) => code === 'several-treatments')).toHaveLength(1);
    expect(found.some(({ weight }) => weight === 'no-cause')).toBe(false);
  });
});
