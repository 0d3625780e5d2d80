import { fieldPath, issueReason } from '../contract/fieldPath.ts';
import { workProtocolSchema } from '../contract/workProtocol.ts';
import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import { type WorkProtocol, workProtocolSchemaName } from '../records/workProtocol.ts';

/** A protocol that another studio sent; `protocol-newer` for a later form, `protocol-malformed` for anything else. */
export function readSentProtocol(sent: unknown): Result<WorkProtocol> {
  const schema = typeof sent === 'object' && sent !== null && 'schema' in sent ? String(sent.schema) : '';
  if (/^stonetone\/protocol\/\d+$/.test(schema) && schema !== workProtocolSchemaName)
    return fail(failure('protocol-newer', { schema }, 'schema'));
  if (schema === '') return fail(failure('protocol-malformed', { why: 'it names no schema' }, 'schema'));
  const read = workProtocolSchema.safeParse(sent);
  if (read.success) return ok(read.data);
  return fail(failure('protocol-malformed', { why: issueReason(read.error) }, fieldPath(read.error)));
}
