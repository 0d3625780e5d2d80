import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { exportZones, importZones } from '../../application/works/zonesFile.ts';
import { idSchema } from '../../contract/common.ts';
import { zonesImportSchema } from '../../contract/work.ts';
import { workEntrySchema } from '../../contract/workEntry.ts';
import { zonesSchema } from '../../contract/zones.ts';
import type { WorkEntry } from '../../records/workEntry.ts';
import type { Zone } from '../../records/zone.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['works'];
const params = z.object({ id: idSchema });

/** The zones of a work as zones.json, out and in. */
export function addZonesFileRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/zones.json',
    {
      schema: {
        tags,
        summary: 'The zones as zones.json: mm from the top left of the work rectangle, else of the stone',
        params,
        response: { 200: answerOf<readonly Zone[]>(zonesSchema), ...refusals },
      },
    },
    async (request, reply) => {
      const zones = await exportZones(services, request.params.id);
      if (!zones.ok) return sendFailure(reply, zones.error);
      return reply.header('content-disposition', 'attachment; filename="zones.json"').send(zones.value);
    },
  );

  app.put(
    '/api/works/:id/zones.json',
    {
      schema: {
        tags,
        summary: 'Take zones.json in: it replaces the zones of the work',
        params,
        body: zonesImportSchema,
        response: { 200: answerOf<WorkEntry>(workEntrySchema), ...saveRefusals(workEntrySchema) },
      },
    },
    async (request, reply) => {
      const saved = await importZones(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );
}
