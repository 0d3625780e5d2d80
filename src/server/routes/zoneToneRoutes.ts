import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { measureZoneTones } from '../../application/zoneTones/measureZoneTones.ts';
import { idSchema } from '../../contract/common.ts';
import { zoneTonesRequestSchema, zoneTonesSchema } from '../../contract/zoneTones.ts';
import type { ZoneTones } from '../../records/zoneTones.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { whenGone } from '../whenGone.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

/** Tones of a work's zones, read from a photograph for a person to accept. */
export function addZoneToneRoutes(app: App, services: Services): void {
  app.post(
    '/api/works/:id/zone-tones',
    {
      schema: {
        tags: ['works'],
        summary: 'Read mean and darkest tone of the zones from an attached photograph; nothing is saved',
        params: z.object({ id: idSchema }),
        body: zoneTonesRequestSchema,
        response: { 200: answerOf<ZoneTones>(zoneTonesSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const tones = await measureZoneTones(services, request.params.id, request.body, whenGone(reply));
      return tones.ok ? reply.send(tones.value) : sendFailure(reply, tones.error);
    },
  );
}
