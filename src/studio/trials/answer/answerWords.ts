import type {
  AuditFinding,
  FactorTest,
  HoldOdds,
  HoldShare,
  PositionEffect,
  TreatmentHold,
  TrialUnit,
} from '../../../records/testStoneAnswer.ts';
import type { TrialDifference } from '../../../records/trial.ts';

const many: Readonly<Record<TrialUnit, string>> = {
  stone: 'stones',
  strip: 'strips',
  square: 'squares',
  patch: 'patches',
};

/** `3 of 4 patches`: how many of what one replicate is. */
export function unitsWords({
  unit,
  units,
  unitsHeld,
}: Pick<HoldShare, 'unit' | 'units' | 'unitsHeld'>): string {
  return `${unitsHeld} of ${units} ${units === 1 ? unit : many[unit]}`;
}

/** `3 of 3 stones held in every patch: 44–100 %`, with what that surely is. */
export function shareWords(share: HoldShare): string {
  const range = `${percent(share.low)}–${percent(share.high)} %`;
  return `${unitsWords(share)} held in every patch (${share.patchesHeld} of ${share.patches} patches): ${range} hold (19 times of 20, two-sided)`;
}

/** What a treatment's patches come to, in a sentence. */
export function holdSentence({ name, share, counts, verdict }: TreatmentHold): string {
  if (!share) return `${name}: no patch could be read.`;
  switch (verdict) {
    case 'holds':
      return `${atStart(name)} holds: ${shareWords(share)}; at least ${percent(share.least)} % (19 times of 20, one-sided).`;
    case 'holds-here':
      return `${atStart(name)} holds on this stone: ${shareWords(share)}. Another stone was not tried.`;
    case 'fails':
    case 'fails-here': {
      const how = counts.filled > counts.lost + counts.weak ? 'fills in' : 'does not hold';
      const where = verdict === 'fails-here' ? ' on this stone' : '';
      return `${atStart(name)} ${how}${where}: ${shareWords(share)}; at most ${percent(share.most)} % (19 times of 20, one-sided).`;
    }
    case 'open':
      return `${atStart(name)} is not sure yet: ${shareWords(share)}.`;
    default:
      return verdict satisfies never;
  }
}

/** What was found of every factor, as far as a cause can be assigned. */
export function factorSentences(
  tests: readonly FactorTest[],
  contrasts: readonly TrialDifference[],
  odds: readonly HoldOdds[],
  what: string,
): string[] {
  return tests.flatMap(({ factor, under, denDf, p }) => {
    if (denDf === null || p === null) return [];
    if (under !== undefined) {
      const asked = `Does ${factor} matter more under one ${under} than under another?`;
      return p < 0.05
        ? [
            `${asked} It does, and chance would do as much in ${p < 0.01 ? 'fewer than 1' : Math.round(100 * p)} of 100 trials: read each ${factor} under each ${under} for itself.`,
          ]
        : [`${asked} Not that it shows: chance would do as much in ${Math.round(100 * p)} of 100 trials.`];
    }
    const own = contrasts.filter(({ term }) => term === factor);
    const told = own.filter(({ low, high }) => low > 0 || high < 0);
    const sentences = told.map(
      ({ level, against, value, low, high }) =>
        `${atStart(level)} prints ${signed(Math.abs(value))} ${value > 0 ? 'darker' : 'lighter'} than ${against} (${what}; ${signed(low)} to ${signed(high)} with all differences taken together).`,
    );
    const better = odds
      .filter((one) => one.factor === factor && (one.low > 1 || one.high < 1))
      .map(
        (one) =>
          `${atStart(one.level)} holds ${one.odds > 1 ? 'better' : 'worse'} than ${one.against}: the odds of a better hold are ${factorWords(one)}.`,
      );
    if (sentences.length + better.length > 0) return [...sentences, ...better];
    const apart = own.length > 0 ? Math.max(...own.map(({ low, high }) => Math.max(-low, high))) : null;
    return [
      `No difference of tone between one ${factor} and another is shown${apart === null ? '' : `; one of up to ${apart.toFixed(2)} could be hidden`}.`,
    ];
  });
}

/** A slope over the stone, where it is surely one. */
export function positionSentences(position: readonly PositionEffect[]): string[] {
  return position
    .filter(({ low, high }) => low > 0 || high < 0)
    .map(
      ({ along, per100Mm, low, high }) =>
        `Tones ${per100Mm > 0 ? 'rise' : 'fall'} from ${along} by ${Math.abs(per100Mm).toFixed(3)} every 100 mm (${signed(low)} to ${signed(high)}), whatever a patch got.`,
    );
}

/** Where no cause can be assigned, said first. */
export function causeSentences(audit: readonly AuditFinding[]): string[] {
  return audit.filter(({ weight }) => weight === 'no-cause').map(({ message }) => message);
}

/** That nothing is sure of any treatment, in a sentence; none where something is. */
export function verdictSentence(holds: readonly TreatmentHold[], stones: number): string[] {
  const open = holds.filter(({ verdict }) => verdict === 'open');
  if (open.length < holds.length || holds.length === 0) return [];
  return [
    `What holds is not sure yet: with ${stones === 1 ? 'one stone' : `${stones} stones`}, even if all held, too few bear it out; five alike are the fewest that do.`,
  ];
}

/** A word as it begins a sentence; pH and the like stay. */
function atStart(name: string): string {
  return /^\p{Ll}{2}/u.test(name) ? `${name[0]!.toUpperCase()}${name.slice(1)}` : name;
}

function factorWords({ odds, low, high }: HoldOdds): string {
  const turned = odds > 1 ? { odds, low, high } : { odds: 1 / odds, low: 1 / high, high: 1 / low };
  return `${times(turned.odds)} times ${odds > 1 ? 'higher' : 'lower'} (${times(turned.low)} to ${times(turned.high)} times)`;
}

/** As many digits as a ratio of odds deserves. */
function times(ratio: number): string {
  if (ratio >= 100) return 'over 100';
  return ratio >= 10 ? ratio.toFixed(0) : ratio.toFixed(1);
}

function percent(share: number): string {
  return (100 * share).toFixed(0);
}

function signed(value: number): string {
  return value.toFixed(2).replace('-', '−');
}
