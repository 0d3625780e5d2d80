import type { FastifyReply } from 'fastify';
import type { Failure } from '../foundation/failure.ts';
import type { SaveRefusal } from '../records/saving.ts';
import { httpStatus } from './httpStatus.ts';

/** Answers a modelled failure: its status, and the failure as the body. */
export function sendFailure(reply: FastifyReply, failure: Failure): FastifyReply {
  return sendRefusal(reply, { failure, current: null });
}

/** Answers a save that was refused; where somebody saved in between, with the record as it is kept now. */
export function sendRefusal(reply: FastifyReply, { failure, current }: SaveRefusal<unknown>): FastifyReply {
  const { code, message, remedy, path } = failure;
  return reply
    .code(httpStatus[code])
    .type('application/json; charset=utf-8')
    .serializer(JSON.stringify)
    .header('cache-control', 'no-store')
    .send({ code, message, remedy, ...(path ? { path } : {}), ...(current === null ? {} : { current }) });
}
