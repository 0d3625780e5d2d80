import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { say } from '../../words/say.ts';

/** The small line above the proofs' headlines: which work, and the ways back. */
export function ProofsStamp({ work, here }: { work: WorkEntry; here?: string }) {
  return (
    <>
      <Link href={`/works/${work.id}`}>{work.title}</Link> · {work.stone.name} ·{' '}
      {here === undefined ? say('Proofs') : <Link href={`/works/${work.id}/proofs`}>{say('Proofs')}</Link>}
      {here !== undefined && ` · ${here}`}
    </>
  );
}
