import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { extname } from 'node:path';
import type { FastifyReply } from 'fastify';
import { failure } from '../foundation/failure.ts';
import { sendFailure } from './failureReply.ts';
import { documentPolicy } from './guards/securityHeaders.ts';

const contentTypes: Readonly<Record<string, string>> = {
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.pdf': 'application/pdf',
  '.json': 'application/json; charset=utf-8',
};

/** `forever` for what is named by its content; `ask-again` for what another measurement may replace. */
export type Keeping = 'forever' | 'ask-again';

const cacheControl: Readonly<Record<Keeping, string>> = {
  forever: 'private, max-age=31536000, immutable',
  'ask-again': 'no-cache',
};

/**
 * Sends a file of the data folder. The path comes from a use case, never from the request.
 * A file that has gone meanwhile answers `not-found`.
 */
export async function sendStored(reply: FastifyReply, path: string, keeping: Keeping): Promise<FastifyReply> {
  const found = await stat(path).catch(() => null);
  if (found === null) return sendFailure(reply, failure('not-found', { what: 'such file' }));
  const ending = extname(path);
  if (ending === '.svg') reply.header('content-security-policy', documentPolicy);
  const tag = `"${found.size}-${found.mtimeMs}"`;
  reply.header('cache-control', cacheControl[keeping]).header('etag', tag);
  if (reply.request.headers['if-none-match'] === tag) return reply.code(304).send();
  return reply
    .type(contentTypes[ending] ?? 'application/octet-stream')
    .header('content-length', found.size)
    .send(createReadStream(path));
}
