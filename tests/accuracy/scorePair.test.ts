import { describe, expect, it } from 'vitest';
import { accuracyTable } from '../../bench/accuracyTable.ts';
import { renderedBenchPair } from '../../bench/benchPair.ts';
import { fullLimits } from '../../bench/limits.ts';
import { type Scorable, scorePair } from '../../bench/scorePair.ts';
import { encodePng } from '../../src/imaging/codecs/encodePicture.ts';
import { testSheet } from '../../src/sample/render/layouts/testSheet.ts';
import { plainCase } from '../../src/sample/render/pairCase.ts';

const scumPatch = { kind: 'scum', centreMm: [60, 275], radiiMm: [22, 16], amount: 0.1 } as const;
const pair = await renderedBenchPair(
  {
    ...plainCase('scored', 3, testSheet(3)),
    megapixels: 0.3,
    cellsPerMm: 4,
    damage: { patches: [scumPatch], edgeScum: null, uniformScum: 0 },
  },
  'usual',
);

/** A record made from the truth: samples moved by so many proof px, coverage raised by so much. */
async function answer(offPx: number, offCoverage: number): Promise<Scorable> {
  const { columns, rows } = pair.maps;
  const files = new Map<string, Uint8Array>();
  for (const kind of ['lost', 'filled', 'scum'] as const)
    files.set(
      `${kind}.png`,
      await encodePng({ widthPx: columns, heightPx: rows, channels: 1, codes: pair.maps[kind] }),
    );
  const interval = (coverage: number | null) =>
    coverage === null
      ? null
      : {
          coverage: coverage + offCoverage,
          low: coverage + offCoverage - 0.01,
          high: coverage + offCoverage + 0.01,
        };
  return {
    files,
    record: {
      verdict: 'ok',
      warnings: [],
      registration: {
        residualMm: { median: 0.01, p90: 0.02 },
        samples: pair.truth.grid
          .filter((_, i) => i % 3 === 0)
          .map(({ stoneMm, stonePx, proofPx }) => ({
            stoneMm,
            stonePx,
            proofPx: [proofPx[0] + offPx, proofPx[1]],
          })),
      },
      zones: pair.truth.zones.map((zone) => ({
        id: zone.id,
        drawn: interval(zone.drawn),
        printed: interval(zone.printed),
        change: zone.change,
      })),
      maps: { lost: 'lost.png', filled: 'filled.png', scum: 'scum.png' },
    },
  };
}

describe('scoring', () => {
  it('finds nothing wrong with the truth itself', async () => {
    const score = await scorePair(pair, await answer(0, 0));
    expect(score.registration!.median).toBeLessThan(1e-6);
    expect(score.zones.every((zone) => Math.abs(zone.drawnError) < 1e-9)).toBe(true);
    expect(score.zones.flatMap((zone) => zone.intervals).every(({ holds }) => holds)).toBe(true);
    expect(score.overlap!.scum.both).toBe(score.overlap!.scum.either);
    expect(score.overlap!.scum.both).toBeGreaterThan(2000);
    expect(score.falseWarnings).toEqual([]);
  });

  it('gives back an error that was put in, in mm', async () => {
    const score = await scorePair(pair, await answer(1, 0.015));
    const { grid } = pair.truth;
    const pxPerMm = Math.abs(grid[32]!.proofPx[0] - grid[0]!.proofPx[0]) / 300;
    expect(score.registration!.median).toBeCloseTo(1 / pxPerMm, 1);
    expect(score.zones[0]!.drawnError).toBeCloseTo(0.015, 9);
    expect(score.zones[0]!.intervals[0]).toMatchObject({ holds: false });
    const scored = { pair, score, seconds: 1, repeatDifference: null };
    const missed = accuracyTable([scored], fullLimits).filter(({ passed }) => passed === false);
    expect(missed.map(({ what }) => what)).toContain('coverage error, drawn');
    expect(missed.map(({ what }) => what)).toContain('registration, worst median, mm');
  });

  it('names a verdict or a warning that should not be, and one that is missing', async () => {
    const right = await answer(0, 0);
    const record = { ...right.record, verdict: 'no-match' as const, warnings: [{ code: 'blurred' }] };
    const score = await scorePair(
      { ...pair, truth: { ...pair.truth, warnings: ['partial'] } },
      { ...right, record },
    );
    expect(score).toMatchObject({
      verdictRight: false,
      missingWarnings: ['partial'],
      falseWarnings: ['blurred'],
      registration: null,
    });
  });
});
