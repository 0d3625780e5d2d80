import { beforeAll, describe, expect, it } from 'vitest';
import { accuracyTable, caseLine, type ScoredCase } from '../../bench/accuracyTable.ts';
import { renderedBenchPair } from '../../bench/benchPair.ts';
import { kindOf, smallCase, smallCases } from '../../bench/cases.ts';
import { smallLimits } from '../../bench/limits.ts';
import { measurePair } from '../../bench/measurePair.ts';

/** The accuracy bench's small set: rendered pairs of 2 megapixels, held to the limits reasoned in bench/limits.ts. */
describe('the engine on small pairs of known truth', () => {
  const scored: ScoredCase[] = [];

  beforeAll(async () => {
    for (const name of smallCases) {
      scored.push(await measurePair(await renderedBenchPair(await smallCase(name), kindOf(name))));
    }
  }, 300_000);

  it('is within every limit', () => {
    const missed = accuracyTable(scored, smallLimits).filter(({ passed }) => passed === false);
    const report = missed.map(({ what, reached, limit }) => `${what}: ${reached}, limit ${limit}`);
    expect(report, scored.map(caseLine).join('\n')).toEqual([]);
  });
});
