import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';
import { fieldPath, issueReason } from '../contract/fieldPath.ts';
import { type Failure, failure } from '../foundation/failure.ts';

/** A request that does not have the form of its schema. The HTTP library wants an error, so it carries the failure. */
export class MalformedRequest extends Error {
  readonly failure: Failure;

  constructor(why: Failure) {
    super(why.message);
    this.failure = why;
  }
}

/** Checks what was sent with its schema; a fault is said in plain words, with the path to the first wrong field. */
export const requestCheck: FastifySchemaCompiler<z.ZodType> = ({ schema }) => {
  return (sent: unknown) => {
    const read = schema.safeParse(sent);
    if (read.success) return { value: read.data };
    const why = failure('body-malformed', { why: issueReason(read.error) }, fieldPath(read.error));
    return { error: new MalformedRequest(why) };
  };
};
