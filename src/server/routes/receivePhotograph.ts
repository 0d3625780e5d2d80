import type { MultipartFile } from '@fastify/multipart';
import type { FastifyRequest } from 'fastify';
import { type AddedPhotograph, addPhotograph } from '../../application/addPhotograph.ts';
import type { Services } from '../../application/openServices.ts';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import { callerOf } from '../guards/admitCaller.ts';

/** Reads the one photograph of a multipart form as it arrives, and takes it in. */
export async function receivePhotograph(
  request: FastifyRequest,
  services: Services,
): Promise<Result<AddedPhotograph>> {
  if (!request.isMultipart()) return fail(failure('upload-malformed', { why: 'it is no multipart form' }));
  const first = await firstFile(request);
  if (!first.ok) return first;
  const part = first.value;
  const told = Number(request.headers['content-length']);
  const allowed = services.uploadAllowance.take(
    callerOf(request).device?.id ?? null,
    Number.isFinite(told) ? told : services.largestBytes,
  );
  if (!allowed.ok) {
    letGo(request);
    return allowed;
  }
  if (part === undefined) return fail(failure('upload-malformed', { why: 'it holds no file' }));
  const added =
    part.fieldname === 'photograph'
      ? await addPhotograph(services, { fileName: part.filename, content: part.file })
      : fail(failure('upload-malformed', { why: `the field is called ${part.fieldname.slice(0, 40)}` }));
  if (!added.ok) letGo(request);
  return added;
}

/** An answer reaches a sender only after all that it sends has been taken from it. */
function letGo(request: FastifyRequest): void {
  request.raw.unpipe();
  request.raw.resume();
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
