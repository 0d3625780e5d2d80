import { describe, expect, it } from 'vitest';
import type { Measured } from '../../foundation/measured.ts';
import type { PullChange } from '../../records/pullTones.ts';
import { comparisonWords } from '../../studio/proofs/pullChangeWords.ts';
import { type PairRule, pairTones } from './pairTones.ts';

const known = (value: number, half = 0.01): Measured => ({
  value,
  low: value - half,
  high: value + half,
  basis: 'measured',
  warnings: [],
});
/** Darkness of a coverage printed with a solid of that density above the paper. */
const printed = (coverage: number, density: number) => known(coverage * (1 - 10 ** -density));
const whole = { value: 1, deviation: 0 };
const rule: PairRule = {
  kind: 'pulls',
  scale: { partner: whole, pull: whole },
  within: 0.04,
  absolute: true,
  comparable: true,
};

/** The same tone curve, once with a solid of 1.4 D and once of 1.0 D. */
function weakPull(chips: boolean) {
  const pair = (coverage: number) =>
    pairTones(printed(coverage, 1.4), printed(coverage, 1), { ...rule, absolute: chips });
  const change: Omit<PullChange, 'sentences' | 'warnings'> = {
    partner: 'best',
    number: 3,
    measure: 'darkness',
    tones: { lights: pair(0.15), middles: pair(0.5), darks: pair(0.9) },
    zones: [{ id: 'post', name: 'Post', ...pair(1) }],
    strength: { partner: known(1.4, 0.05), pull: known(1, 0.05) },
    maps: null,
  };
  const words = comparisonWords({
    change,
    absolute: chips,
    chips: { partner: chips, pull: chips },
    reference: null,
    papers: { partner: 'rag 250', pull: 'rag 250', sameAge: true },
  });
  return { change, words };
}

describe('the same curve with a solid of 1.0 D against 1.4 D', () => {
  it('with chips says that the solid is 0.4 D light', () => {
    const { words } = weakPull(true);
    expect(words.sentences[0]).toContain('The solid is 0.4 D light');
  });

  it('without chips says of nothing that it held, and nothing of the solid', () => {
    const { change, words } = weakPull(false);
    const said = [...Object.values(change.tones), ...change.zones].map((one) => one.change);
    expect(said).not.toContain('held');
    expect(words.sentences.join(' ')).not.toContain('solid');
    expect(words.warnings.join(' ')).toContain('nothing is said to have held');
  });
});

describe('a pair of tones', () => {
  it('is darker only beyond the tolerance by its own doubt, held within it, else undecided', () => {
    expect(pairTones(known(0.5), known(0.6), rule).change).toBe('darker');
    expect(pairTones(known(0.6), known(0.5), rule).change).toBe('lighter');
    expect(pairTones(known(0.5), known(0.53), rule).change).toBe('held');
    expect(pairTones(known(0.5), known(0.55, 0.02), rule).change).toBe('undecided');
  });

  it('of another paper or age, or with one unread, is never decided', () => {
    expect(pairTones(known(0.2), known(0.9), { ...rule, comparable: false }).change).toBe('undecided');
    expect(pairTones(null, known(0.9), rule)).toMatchObject({ difference: null, change: 'undecided' });
  });
});
