import { workOutMixture } from '../../application/questions/workOutMixture.ts';
import { mixtureSchema } from '../../contract/mixture.ts';
import { mixtureAnswerSchema } from '../../contract/mixtureAnswer.ts';
import type { MixtureAnswer } from '../../records/mixture.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

/** Mixing questions, worked out and not kept. */
export function addMixtureRoutes(app: App): void {
  app.post(
    '/api/mixtures',
    {
      schema: {
        tags: ['mixing'],
        summary: 'Work out a mixing question, with formula, source, what it may be off by, and cautions',
        body: mixtureSchema,
        response: { 200: answerOf<MixtureAnswer>(mixtureAnswerSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const answer = workOutMixture(request.body);
      return answer.ok ? reply.send(answer.value) : sendFailure(reply, answer.error);
    },
  );
}
