import type { FastifyRequest } from 'fastify';
import { type AddedPhotograph, addPhotograph } from '../../application/addPhotograph.ts';
import type { Services } from '../../application/openServices.ts';
import { failure } from '../../foundation/failure.ts';
import { fail, type Result } from '../../foundation/result.ts';

/** Reads the one photograph of a multipart form as it arrives, and takes it in. */
export async function receivePhotograph(
  request: FastifyRequest,
  services: Services,
): Promise<Result<AddedPhotograph>> {
  if (!request.isMultipart()) return fail(failure('upload-malformed', { why: 'it is no multipart form' }));
  const part = await request.file();
  if (part === undefined) return fail(failure('upload-malformed', { why: 'it holds no file' }));
  const added =
    part.fieldname === 'photograph'
      ? await addPhotograph(services, { fileName: part.filename, content: part.file })
      : fail(failure('upload-malformed', { why: `the field is called ${part.fieldname.slice(0, 40)}` }));
  // an answer reaches a sender only after all that it sends has been taken from it
  if (!added.ok) {
    request.raw.unpipe();
    request.raw.resume();
  }
  return added;
}
