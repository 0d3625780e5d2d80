import { type Failure, failure } from '../foundation/failure.ts';
import { jsonLimitBytes, uploadLimitBytes } from './limits.ts';
import { MalformedRequest } from './requestCheck.ts';

/**
 * The modelled failure behind an error that the HTTP library threw, or null for one that nobody expected.
 * Codes: fastify's own (`FST_ERR_CTP_…`), the multipart reader's, the check of requests, and a disk that is full.
 */
export function failureOfError(error: unknown): Failure | null {
  if (error instanceof MalformedRequest) return error.failure;
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return null;
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return failure('body-too-large', { limit: jsonLimitBytes / 1e6 });
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
    case 'FST_ERR_CTP_EMPTY_TYPE':
      return failure('body-malformed', { why: 'it is not JSON' });
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
      return failure('body-malformed', { why: 'it is empty' });
    case 'FST_ERR_CTP_INVALID_JSON_BODY':
    case 'FST_ERR_CTP_INVALID_CONTENT_LENGTH':
      return failure('body-malformed', { why: 'it is not whole JSON' });
    case 'FST_REQ_FILE_TOO_LARGE':
      return failure('upload-too-large', { file: 'The upload', limit: uploadLimitBytes / 1e6 });
    case 'FST_PARTS_LIMIT':
    case 'FST_FILES_LIMIT':
    case 'FST_FIELDS_LIMIT':
      return failure('upload-malformed', { why: 'it holds more than one photograph' });
    case 'FST_PROTO_VIOLATION':
    case 'FST_INVALID_MULTIPART_CONTENT_TYPE':
    case 'FST_NO_FORM_DATA':
      return failure('upload-malformed', { why: 'it is no multipart form' });
    // a path that cannot be decoded, or with a name longer than any
    case 'FST_ERR_BAD_URL':
    case 'FST_ERR_MAX_PARAM_LENGTH':
      return failure('not-found', { what: 'such page' });
    // nobody is left to hear it
    case 'ECONNRESET':
      return failure('body-malformed', { why: 'it broke off' });
    // SQLite's own words for a write that the disk refused, and the system's
    case 'SQLITE_FULL':
    case 'SQLITE_IOERR_WRITE':
    case 'SQLITE_IOERR_FSYNC':
    case 'ENOSPC':
    case 'EDQUOT':
      return failure('storage-full', { why: error.message });
    default:
      return null;
  }
}
