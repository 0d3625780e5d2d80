import type { ShownFailure } from '../client/shownFailure.ts';
import { Notice } from './Notice.tsx';

/** What went wrong and what to do about it, read out at once. */
export function FailureNotice({ failure }: { failure: Pick<ShownFailure, 'message' | 'remedy'> }) {
  return (
    <Notice kind="trouble" title={failure.message}>
      {failure.remedy}
    </Notice>
  );
}
