import { fail, ok, type Result } from '../../../foundation/result.ts';
import { say } from '../../words/say.ts';

/** Why a file was not taken for a protocol. */
export interface ProtocolFileTrouble {
  readonly message: string;
  readonly remedy: string;
}

/** The largest that a server takes, bytes. */
const mostBytes = 4e6;

/** Reads a protocol.json as chosen by a person; only that it is JSON of a sensible size is looked at here. */
export function readProtocolFile(text: string): Result<unknown, ProtocolFileTrouble> {
  if (text.length > mostBytes)
    return fail({
      message: say('This file is too long for a protocol.'),
      remedy: say('Choose the protocol.json that the other studio gave out.'),
    });
  try {
    return ok(JSON.parse(text));
  } catch {
    return fail({
      message: say('This file is not JSON.'),
      remedy: say('Choose the protocol.json as it was saved; the PDF is for reading only.'),
    });
  }
}
