import type { ShownFailure } from '../client/shownFailure.ts';
import { say } from '../words/say.ts';

/** Where a failure is to be mended, when that is not the last step: the step's address and words for a link. */
export function stepOfPath({ code, path = '' }: ShownFailure): { address: string; words: string } | null {
  if (code.startsWith('picture') || code.startsWith('file'))
    return { address: '/new', words: say('To the photographs') };
  if (/^stone(\.|$)/.test(path)) return { address: '/new/stone', words: say('To the stone’s corners') };
  if (/^proof(\.|$)/.test(path)) return { address: '/new/print', words: say('To the print’s corners') };
  return null;
}
