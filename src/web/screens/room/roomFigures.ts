import type { LiftAnswer, RoomAnswer, VapourAnswer } from '../../../records/roomAnswer.ts';
import { thousands } from '../../words/figures.ts';
import { say } from '../../words/say.ts';

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
        name: say('Vapour, if all of it evaporates'),
        figure: say('{digits} to {digits2} mg/m³', { digits: digits(low), digits2: digits(high) }),
        words: reason,
      },
      {
        name: say('Against the limit typed'),
        figure: say('{digits} times', { digits: digits(answer.timesLimit) }),
        words: say('spread evenly; near the stone up to ten times as much'),
      },
      {
        name: say('Until it has thinned to the limit'),
        figure: clears
          ? span(answer.clearing.low, answer.clearing.high)
          : say('never above it, spread evenly'),
        words: clears
          ? say('mixing factor 3 to 10, and nothing more given off')
          : say('over the stone it may be'),
      },
    ];
  }
  if ('multipliers' in answer) {
    const { index } = answer;
    const limit = {
      name: say('Weight limit for this lift'),
      figure: say('{digits} to {digits2} kg', { digits: digits(low), digits2: digits(high) }),
      words: reason,
    };
    if (!index || index.low === null) return [limit];
    const most = index.high === null ? say('no end') : digits(index.high);
    return [
      {
        name: say('The stone against the limit'),
        figure: say('{digits} to {most} times', { digits: digits(index.low), most }),
        words: say('at most 1 is the goal'),
      },
      limit,
    ];
  }
  return [
    {
      name: answer.kind === 'air' ? say('Until so much is gone') : say('Dust of this grain may hang'),
      figure: span(low, high),
      words: reason,
    },
  ];
}

function span(low: number, high: number): string {
  return high < 120
    ? say('{digits} to {digits2} min', { digits: digits(low), digits2: digits(high) })
    : say('{digits} to {digits2} h', { digits: digits(low / 60), digits2: digits(high / 60) });
}

/** Two digits: none of these figures deserves more. */
function digits(value: number): string {
  return value === 0 ? '0' : thousands(Number(value.toPrecision(2)));
}
