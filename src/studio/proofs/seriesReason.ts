import type {
  FittedValue,
  PullReading,
  SeriesState,
  SeriesTone,
  ToneCourse,
} from '../../records/proofSeries.ts';
import { alikeDarknessWords, darknessWords, listWords, pullWords } from './seriesWords.ts';
import { fewestPulls, tonePoints } from './toneCourses.ts';

/** What a reason is told from: too few pulls to fit, or what the fit says. */
export type ReasonGrounds =
  | {
      readonly kind: 'few';
      readonly count: number;
      readonly few: readonly SeriesTone[];
      readonly comparable: readonly PullReading[];
    }
  | {
      readonly kind: 'fitted';
      readonly state: SeriesState;
      readonly tones: readonly ToneCourse[];
      readonly since: number | null;
      readonly settled: FittedValue | null;
      readonly tolerance: number;
      readonly deviation: number;
      readonly scattered: boolean;
      readonly compared: readonly number[];
      readonly pullsNeeded: number;
    };

type Fitted = Extract<ReasonGrounds, { kind: 'fitted' }>;

/** Above this many pulls, more of the same readings are no advice. Our rule. */
const worthPulling = 12;

/** A change of darkness too small to be told from none: half of the last digit in which changes are said. */
export const unseenChange = 0.0005;

/** Why the answer is what it is, in two or three sentences. */
export function seriesReason(grounds: ReasonGrounds): string {
  if (grounds.kind === 'few') return fewSentence(grounds);
  const { state } = grounds;
  switch (state) {
    case 'steady':
      return `Steady since pull ${grounds.since}, ${pullWords(grounds.compared)} compared: ${changes(grounds.tones)}, all within ${tolerated(grounds)}.${ranOutSentence(grounds)}`;
    case 'not-yet':
      return `Not yet steady: ${changes(outside(grounds).filter(({ change }) => change.low > unseenChange))}, against ${tolerated(grounds)}. It slows: ${settledWords(grounds.settled!, grounds.compared.at(-1)!)}.`;
    case 'growing':
      return `Growing: ${changes(outside(grounds).filter(({ change }) => change.low > unseenChange))}, against ${tolerated(grounds)}. No end of it can be seen from these pulls.`;
    case 'fading':
      return `Not steady, it prints paler: ${changes(outside(grounds).filter(({ change }) => change.high < -unseenChange))}, against ${tolerated(grounds)}.`;
    case 'cannot-tell':
      return `Can’t tell: ${changes(outside(grounds))}, which allows both no change and more than ${tolerated(grounds)}. ${noiseSentence(grounds)}`;
    default:
      return state satisfies never;
  }
}

function fewSentence({ count, few, comparable }: Extract<ReasonGrounds, { kind: 'few' }>): string {
  if (count === 0) return 'Can’t tell: there are no pulls yet.';
  if (count < fewestPulls || few.length === 0)
    return `Can’t tell: ${count === 1 ? 'one comparable pull' : `${count} comparable pulls`} of one paper and one age, ${fewestPulls} are needed.`;
  const read = few.map((tone) => `the ${tone} on ${tonePoints(comparable, tone).length}`);
  return `Can’t tell: of ${count} comparable pulls ${listWords(read)} were read, ${fewestPulls} readings are needed.`;
}

function outside({ tones, tolerance }: Fitted): readonly ToneCourse[] {
  return tones.filter(({ change }) => change.high > tolerance || change.low < -tolerance);
}

/** `over the next two pulls the darks change by 0.02 (0.01 to 0.03, 9 times of 10)`; what rounds to nothing is no zero. */
function changes(tones: readonly ToneCourse[]): string {
  const seen = tones.flatMap(({ change: { value, low, high } }) =>
    [value, low, high].filter((one) => Math.abs(one) >= unseenChange),
  );
  const said = new Map(alikeDarknessWords(seen).map((words, i) => [seen[i]!, signed(words)]));
  let named = false;
  const each = tones.map(({ tone, change }, i) => {
    const by = `the ${tone} ${i === 0 ? 'change by ' : 'by '}${said.get(change.value) ?? leastSaid}`;
    if (ranOut(change)) return by;
    const interval = `${said.get(change.low) ?? '0'} to ${said.get(change.high) ?? '0'}`;
    const words = `${by} (${interval}${named ? '' : ', 9 times of 10'})`;
    named = true;
    return words;
  });
  return `over the next two pulls ${listWords(each)}`;
}

/** The least change that is said. */
const leastSaid = 'less than 0.001';

/** Whether no course that the readings allow moves any more: that is reckoned, and surer than any reading. */
function ranOut({ low, high }: FittedValue): boolean {
  return low > -unseenChange && high < unseenChange;
}

/** What a change of next to nothing is worth: it is the course's, not the next reading's. */
function ranOutSentence({ tones, deviation, scattered }: Fitted): string {
  if (!tones.some(({ change }) => ranOut(change))) return '';
  const still = scattered ? 'the pulls still differ among themselves' : 'one reading still strays';
  return ` Less than 0.001 is reckoned for a course that has run out; ${still} by ${darknessWords(deviation)}.`;
}

function signed(words: string): string {
  return words.startsWith('-') ? words.replace('-', '−') : `+${words}`;
}

function tolerated({ tolerance }: Fitted): string {
  return `the tolerance of ${darknessWords(tolerance)}`;
}

function settledWords({ value, low, high }: FittedValue, latest: number): string {
  if (value <= latest) return `it may be steady already, and will be by about pull ${high}`;
  return low === high
    ? `steady from about pull ${value}`
    : `steady from about pull ${value} (${low} to ${high}, 9 times of 10)`;
}

function noiseSentence({ deviation, scattered, compared, pullsNeeded }: Fitted): string {
  const source = scattered
    ? `The pulls differ among themselves by ${darknessWords(deviation)}`
    : `One reading strays by ${darknessWords(deviation)}`;
  if (pullsNeeded > worthPulling)
    return `${source}, too much for this tolerance: read by photograph, set up twice, or accept a wider tolerance.`;
  const more = Math.max(1, pullsNeeded - compared.length);
  return `${source}: ${more === 1 ? 'one more comparable pull' : `${more} more comparable pulls`} may tell.`;
}
