import type { RoomAnswer } from '../../records/roomAnswer.ts';
import type { RoomQuestion } from '../../records/roomQuestion.ts';
import { answerRoom } from '../../studio/room/answerRoom.ts';

/** Answers a question about the room's air or a lift; nothing is kept. */
export function answerRoomQuestion(question: RoomQuestion): RoomAnswer {
  return answerRoom(question);
}
