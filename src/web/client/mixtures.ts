import type { MixtureAnswer, MixtureQuestion } from '../../records/mixture.ts';
import { ask, withJson } from './ask.ts';

/** Works out one mixing question. */
export function askMixture(question: MixtureQuestion, signal?: AbortSignal): Promise<MixtureAnswer> {
  return ask('/api/mixtures', { ...withJson('POST', question), ...(signal && { signal }) });
}
