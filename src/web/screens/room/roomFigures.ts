import type { LiftAnswer, RoomAnswer, VapourAnswer } from '../../../records/roomAnswer.ts';

/** One figure of an answer as it is shown: always a range. */
interface ShownFigure {
  readonly name: string;
  readonly figure: string;
  readonly words: string;
}

/** The figures of an answer about a room or a lift, the one to plan with first. */
export function roomFigures(answer: RoomAnswer | VapourAnswer | LiftAnswer): ShownFigure[] {
  const { low, high, reason } = answer.range;
  if ('clearing' in answer) {
    const clears = answer.clearing.high > 0;
    return [
      {
        name: 'Vapour, if all of it evaporates',
        figure: `${digits(low)} to ${digits(high)} mg/m³`,
        words: reason,
      },
      {
        name: 'Against the limit typed',
        figure: `${digits(answer.timesLimit)} times`,
        words: 'spread evenly; near the stone up to ten times as much',
      },
      {
        name: 'Until it has thinned to the limit',
        figure: clears ? span(answer.clearing.low, answer.clearing.high) : 'never above it, spread evenly',
        words: clears ? 'mixing factor 3 to 10, and nothing more given off' : 'over the stone it may be',
      },
    ];
  }
  if ('multipliers' in answer) {
    const { index } = answer;
    const limit = {
      name: 'Weight limit for this lift',
      figure: `${digits(low)} to ${digits(high)} kg`,
      words: reason,
    };
    if (!index || index.low === null) return [limit];
    const most = index.high === null ? 'no end' : digits(index.high);
    return [
      {
        name: 'The stone against the limit',
        figure: `${digits(index.low)} to ${most} times`,
        words: 'at most 1 is the goal',
      },
      limit,
    ];
  }
  return [
    {
      name: answer.kind === 'air' ? 'Until so much is gone' : 'Dust of this grain may hang',
      figure: span(low, high),
      words: reason,
    },
  ];
}

function span(low: number, high: number): string {
  return high < 120
    ? `${digits(low)} to ${digits(high)} min`
    : `${digits(low / 60)} to ${digits(high / 60)} h`;
}

/** Two digits: none of these figures deserves more. */
function digits(value: number): string {
  return value === 0 ? '0' : Number(value.toPrecision(2)).toLocaleString('en');
}
