import type { LiftAnswer, RoomAnswer, VapourAnswer } from '../../records/roomAnswer.ts';
import type { RoomQuestion } from '../../records/roomQuestion.ts';
import { airClearing } from './clearing.ts';
import { dustSettling } from './dustSettling.ts';
import { lift } from './lift.ts';
import { vapourPeak } from './vapourPeak.ts';

/** Answers a question about the room's air or a lift; a figure for planning, never leave to go in. */
export function answerRoom(question: RoomQuestion): RoomAnswer | VapourAnswer | LiftAnswer {
  switch (question.kind) {
    case 'air':
      return airClearing(question.airChangesPerHour, question.removal);
    case 'settle':
      return dustSettling(question.micron, question.gramsPerCm3, question.metres);
    case 'vapour':
      return vapourPeak(question);
    case 'lift':
      return lift(question);
    default:
      return question satisfies never;
  }
}
