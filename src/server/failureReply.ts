import type { FastifyReply } from 'fastify';
import type { Failure } from '../foundation/failure.ts';
import { httpStatus } from './httpStatus.ts';

/** Answers a modelled failure: its status, and the failure as the body. */
export function sendFailure(reply: FastifyReply, failure: Failure): FastifyReply {
  const { code, message, remedy, path } = failure;
  return reply
    .code(httpStatus[code])
    .type('application/json; charset=utf-8')
    .serializer(JSON.stringify)
    .header('cache-control', 'no-store')
    .send({ code, message, remedy, ...(path ? { path } : {}) });
}
