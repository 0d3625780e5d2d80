import type { FastifyReply } from 'fastify';
import type { Result } from '../../foundation/result.ts';
import { sendFailure } from '../failureReply.ts';

/** Sends a sheet as a PDF that is asked for anew each time, or why there is none. */
export function sendSheet(reply: FastifyReply, sheet: Result<Uint8Array>): FastifyReply {
  if (!sheet.ok) return sendFailure(reply, sheet.error);
  return reply.type('application/pdf').header('cache-control', 'no-cache').send(Buffer.from(sheet.value));
}
