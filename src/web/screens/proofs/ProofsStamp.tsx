import { Link } from 'wouter';
import type { WorkEntry } from '../../../records/workEntry.ts';

/** The small line above the proofs' headlines: which work, and the ways back. */
export function ProofsStamp({ work, here }: { work: WorkEntry; here?: string }) {
  return (
    <>
      <Link href={`/works/${work.id}`}>{work.title}</Link> · {work.stone.name} ·{' '}
      {here === undefined ? 'Proofs' : <Link href={`/works/${work.id}/proofs`}>Proofs</Link>}
      {here !== undefined && ` · ${here}`}
    </>
  );
}
