import { beforeAll, describe, expect, it } from 'vitest';
import { mapCaseFeatures } from '../../bench/suspects/mapCase.ts';
import { plantedCase, scoringSettings } from '../../bench/suspects/plantedCase.ts';
import { type ScoredCase, type SuspectScores, scoreCases } from '../../bench/suspects/score.ts';

const count = 36;
/** Cases beside those of the bench, so that what it scores stays unseen. */
const settings = { ...scoringSettings, firstSeed: 5_000_000 };

/** The suspects' bench in small (`npm run bench:suspects`): the first cases of such a set, read from maps. */
describe(`suspects on ${count} simulated cases from seed ${settings.firstSeed}`, () => {
  let scores: SuspectScores;

  beforeAll(() => {
    const cases = Array.from({ length: count }, (_, i): ScoredCase => {
      const planted = plantedCase(settings, i);
      return {
        seed: planted.seed,
        causes: planted.causes,
        unknown: planted.unknown,
        features: mapCaseFeatures(planted),
      };
    });
    scores = scoreCases(cases);
  }, 300_000);

  it('have the true cause among the first two in four of five', () => {
    expect(scores.single).toBeGreaterThanOrEqual(0.8);
    expect(scores.pairedAny).toBeGreaterThanOrEqual(0.8);
  });

  it('leave unknown faults to something else in most cases, and known ones hardly ever', () => {
    expect(scores.elseLeads).toBeGreaterThanOrEqual(0.5);
    expect(scores.elseFalse).toBeLessThanOrEqual(0.1);
  });

  it('say chances that hold', () => {
    expect(scores.calibrationError).toBeLessThanOrEqual(0.05);
  });
});
