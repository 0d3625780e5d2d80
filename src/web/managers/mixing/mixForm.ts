import type { MixtureQuestion } from '../../../records/mixture.ts';
import type { AskForm } from '../asking/askForm.ts';

/** A mixing question as a page. */
export interface MixForm extends AskForm<MixtureQuestion> {
  /** Whether strong acid is handled. */
  readonly acid: boolean;
  /** Whether the answer is a mixture that can be logged. */
  readonly mixed: boolean;
}
