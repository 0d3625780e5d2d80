import type { MultipartFile } from '@fastify/multipart';
import type { FastifyRequest } from 'fastify';
import { type AddedPhotograph, addPhotograph } from '../../application/addPhotograph.ts';
import type { Services } from '../../application/openServices.ts';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';

/** Reads the one photograph of a multipart form as it arrives, and takes it in. */
export async function receivePhotograph(
  request: FastifyRequest,
  services: Services,
): Promise<Result<AddedPhotograph>> {
  if (!request.isMultipart()) return fail(failure('upload-malformed', { why: 'it is no multipart form' }));
  const first = await firstFile(request);
  if (!first.ok) return first;
  const part = first.value;
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

/** The form's first file. What the reader of forms says of one that breaks off before it carries no code. */
async function firstFile(request: FastifyRequest): Promise<Result<MultipartFile | undefined>> {
  try {
    return ok(await request.file());
  } catch (error) {
    if (!(error instanceof Error) || 'code' in error) throw error;
    return fail(failure('upload-malformed', { why: 'it broke off, or its form cannot be followed' }));
  }
}
