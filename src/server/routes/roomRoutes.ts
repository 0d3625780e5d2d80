import { answerRoomQuestion } from '../../application/questions/answerRoomQuestion.ts';
import { roomAnswerSchema, roomQuestionSchema } from '../../contract/roomQuestion.ts';
import type { RoomAnswer } from '../../records/roomAnswer.ts';
import type { App } from '../app.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

/** Questions about the room's air and about lifting, worked out and not kept. */
export function addRoomRoutes(app: App): void {
  app.post(
    '/api/room',
    {
      schema: {
        tags: ['room'],
        summary: 'Work out how long dust may hang, vapour clears, or what a lift weighs on the one who lifts',
        body: roomQuestionSchema,
        response: { 200: answerOf<RoomAnswer>(roomAnswerSchema), ...refusals },
      },
    },
    async (request, reply) => reply.send(answerRoomQuestion(request.body)),
  );
}
