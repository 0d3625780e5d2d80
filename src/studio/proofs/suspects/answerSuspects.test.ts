import { describe, expect, it } from 'vitest';
import {
  type FeatureName,
  type Features,
  featureNames,
  type TestOutcome,
} from '../../../records/suspects.ts';
import { answerSuspects } from './answerSuspects.ts';
import { causeTable } from './causeTable.ts';
import { featureTable } from './featureTable.ts';
import { separatingTests } from './separatingTests.ts';

const sound: Features = Object.fromEntries(
  featureNames.map((name) => [name, { value: 0, deviation: 0.001, note: null }]),
);
const seen = (...names: FeatureName[]): Features => ({
  ...sound,
  ...Object.fromEntries(
    names.map((name) => [name, { value: 4 * featureTable[name].from, deviation: 0.001, note: null }]),
  ),
});
const asked = (features: Features, outcomes: readonly TestOutcome[] = []) =>
  answerSuspects({ features, outcomes, room: null });
const first = (features: Features, outcomes: readonly TestOutcome[] = []) =>
  asked(features, outcomes)
    .suspects.slice(0, 2)
    .map(({ suspect }) => suspect);
const judged = (features: Features, suspect: string, outcomes: readonly TestOutcome[] = []) =>
  asked(features, outcomes).suspects.find((one) => one.suspect === suspect)!;

describe('suspects', () => {
  it('names what speaks for and against, and the picture that shows it', () => {
    const burn = judged(seen('lightsLostInPatches', 'patchesStay'), 'burn');
    expect(burn.evidence).toBe('strong');
    expect(burn.supporting[0]).toMatchObject({ what: 'lightsLostInPatches', see: 'lost.png' });
    expect(burn.supporting.map(({ words }) => words).join()).toMatch(/same place again/);
    const blind = judged(seen('lightsLostInPatches', 'patchesStay'), 'gum-blind');
    expect(blind.opposing.map(({ what }) => what)).toContain('patchesStay');
    expect(burn.weight).toBeGreaterThan(blind.weight);
  });

  it('lets several hold at once', () => {
    const both = asked(seen('borderGrey', 'streakAlong'));
    const strong = both.suspects
      .filter(({ evidence }) => evidence === 'strong')
      .map(({ suspect }) => suspect);
    expect(strong).toEqual(expect.arrayContaining(['border-bare', 'scraper-nick']));
  });

  it('takes a dark line for the nick rather than for grit, and a pale one for either', () => {
    const weight = (suspect: string, ...names: FeatureName[]) => judged(seen(...names), suspect).weight;
    expect(weight('scraper-nick', 'streakAlong', 'streakDarker')).toBeGreaterThan(
      weight('bed-grit', 'streakAlong', 'streakDarker') + 1,
    );
    expect(Math.abs(weight('scraper-nick', 'streakAlong') - weight('bed-grit', 'streakAlong'))).toBeLessThan(
      0.5,
    );
  });

  it('counts unevenness as unexplained beside a slope, not beside a burn', () => {
    const weight = (...names: FeatureName[]) =>
      judged(seen('otherStructure', ...names), 'something-else').weight;
    expect(weight('gradientAcross')).toBeGreaterThan(weight('lightsLostInPatches', 'patchesStay') + 1);
  });

  it('always has something else, which leads where nothing explains what was seen', () => {
    expect(first(seen('otherStructure'))[0]).toBe('something-else');
    for (const features of [sound, {}, seen('borderGrey')])
      expect(asked(features).suspects.map(({ suspect }) => suspect)).toContain('something-else');
    expect(first(seen('borderGrey'))[0]).toBe('border-bare');
  });

  it('takes what was not read for neither seen nor absent', () => {
    const nothing = asked({});
    expect(nothing.suspects.every(({ evidence, chance }) => evidence === 'none' && chance?.value !== 1)).toBe(
      true,
    );
    expect(
      nothing.suspects
        .filter(({ suspect }) => suspect !== 'something-else')
        .every(({ chance }) => chance === null),
    ).toBe(true);
    expect(nothing.unknown).toHaveLength(featureNames.length);
    expect(nothing.warnings.join()).toMatch(/Nothing was read/);
    expect(asked({ ...sound, bareGrey: null }).unknown).toEqual(['bareGrey']);
  });

  it('always asks whether it is the photograph', () => {
    expect(asked({}).photograph.question).toMatch(/photograph/);
    expect(asked(seen('photographDoubt')).photograph.doubt).toBe('strong');
  });

  it('offers first the test that settles most a minute, and learns from it', () => {
    const grey = seen('bareGrey', 'bareGrows');
    const [test] = asked(grey).tests;
    expect(test!.test).toBe('water-wipe');
    expect(first(grey, [{ test: 'water-wipe', outcome: 'yes' }])[0]).toBe('tint');
    expect(first(grey, [{ test: 'water-wipe', outcome: 'no' }])[0]).toBe('scum');
    expect(asked(grey, [{ test: 'water-wipe', outcome: 'no' }]).tests.map((one) => one.test)).not.toContain(
      'water-wipe',
    );
    const lights = seen('lightsLostInPatches');
    expect(judged(lights, 'gum-blind', [{ test: 'lukewarm-wash', outcome: 'yes' }]).weight).toBeGreaterThan(
      judged(lights, 'burn', [{ test: 'lukewarm-wash', outcome: 'yes' }]).weight,
    );
  });

  it('ranks tests by bits a minute and says how many', () => {
    const { tests } = asked(seen('streakAlong'));
    for (const [i, one] of tests.entries()) {
      expect(one.bitsPerMinute).toBeCloseTo(one.bits / one.minutes, 10);
      if (i > 0) expect(one.bitsPerMinute).toBeLessThanOrEqual(tests[i - 1]!.bitsPerMinute);
    }
  });

  it('says where two suspects leave one sign, and offers first what tells them apart', () => {
    for (const [sign, one, other, test] of [
      ['streakAlong', /a nick in the scraper/, /grit on the bed/, 'swap-scraper'],
      ['bareGrey', /tint/, /scum/, 'water-wipe'],
    ] as const) {
      const beside = asked(seen(sign, 'zoneBlank', 'stopOutPrints'));
      expect(beside.warnings[0]).toMatch(/Two suspects leave one sign/);
      expect(beside.warnings[0]).toMatch(one);
      expect(beside.warnings[0]).toMatch(other);
      expect(beside.tests[0]!.test).toBe(test);
    }
    const swapped = asked(seen('streakAlong'), [{ test: 'swap-scraper', outcome: 'yes' }]);
    expect(swapped.warnings.join()).not.toMatch(/one sign/);
    const logged = asked({ ...seen('bareGrey'), ungummedPause: { value: 60, deviation: 1, note: null } });
    expect(logged.warnings.join()).not.toMatch(/one sign/);
    expect(asked(seen('borderGrey')).warnings.join()).not.toMatch(/one sign/);
  });

  it('leaves unevenness all over the sheet to something else, whatever lies beside it', () => {
    for (const beside of ['gradientAcross', 'lightsLostInPatches', 'paleSoftPatch', 'streakAlong'] as const)
      expect(first(seen('unevenAllOver', 'otherStructure', beside))[0], beside).toBe('something-else');
  });

  it('tells a dirty roller from an older drawing by whether the drawing come again explains the shapes', () => {
    expect(first(seen('bareShapes', 'ghostExplains', 'ghostRepeat'))[0]).toBe('dirty-roller');
    expect(first(seen('bareShapes', 'ghostRepeat'))[0]).toBe('old-image');
    const weight = (suspect: string) => judged(seen('bareShapes', 'ghostRepeat'), suspect).weight;
    expect(weight('old-image')).toBeGreaterThan(weight('dirty-roller') + 3);
  });

  it('lets what this room found count', () => {
    const grey = seen('bareGrey');
    const room = { closed: 40, byCause: { scum: 30 } };
    const answer = answerSuspects({ features: grey, outcomes: [], room });
    expect(answer.suspects[0]!.suspect).toBe('scum');
    expect(answer.suspects[0]!.supporting.some(({ what }) => what === 'room')).toBe(true);
    expect(answer.roomCases).toBe(40);
    expect(answer.suspects[0]!.chance!.basis).toMatch(/this room/);
  });

  it('passes over an unknown test and says so', () => {
    expect(asked(sound, [{ test: 'dance', outcome: 'yes' }]).warnings.join()).toMatch(/no test called dance/);
  });

  it('has a table in which every cause can be found and every test knows its causes', () => {
    for (const [cause, { weights }] of Object.entries(causeTable)) {
      const strongest = Math.max(...Object.values(weights).map(([yes]) => yes));
      expect(strongest, cause).toBeGreaterThanOrEqual(2);
      expect(
        separatingTests.some(({ chance }) => cause in chance) || cause === 'stop-out-failed',
        cause,
      ).toBe(true);
    }
  });
});
