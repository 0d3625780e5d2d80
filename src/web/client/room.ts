import type { LiftAnswer, RoomAnswer, VapourAnswer } from '../../records/roomAnswer.ts';
import type { RoomQuestion } from '../../records/roomQuestion.ts';
import { ask, withJson } from './ask.ts';

/** Works out one question about the room or a lift. */
export function askRoom(
  question: RoomQuestion,
  signal?: AbortSignal,
): Promise<RoomAnswer | VapourAnswer | LiftAnswer> {
  return ask('/api/room', { ...withJson('POST', question), ...(signal && { signal }) });
}
