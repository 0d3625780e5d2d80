import type { Result } from '../../foundation/result.ts';
import type { MixtureAnswer, MixtureQuestion } from '../../records/mixture.ts';
import { answerMixture } from '../../studio/mixing/answerMixture.ts';

/** Works out a mixing question; nothing is kept. `mixture-impossible` where no such mixture can be made. */
export function workOutMixture(question: MixtureQuestion): Result<MixtureAnswer> {
  return answerMixture(question);
}
