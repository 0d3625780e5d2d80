import { Link } from 'wouter';
import type { WorkStage } from '../../records/work.ts';
import { say } from '../words/say.ts';
import { Notice } from './Notice.tsx';

/** Says of a work whose stone was grained that nothing more comes of it, and leads to the stone; nothing of any other work. */
export function GrainedAway({
  work,
  linked = true,
}: {
  work: { readonly stage: WorkStage; readonly stone: { readonly id: string; readonly name: string } };
  linked?: boolean;
}) {
  if (work.stage !== 'regrained') return null;
  return (
    <Notice kind="aside" title={say('Grained away:')}>
      {say('nothing more is printed of this work. What was logged, photographed and printed of it is kept.')}{' '}
      {linked && (
        <Link href={`/stones/${work.stone.id}`}>{say('To the stone {name}', { name: work.stone.name })}</Link>
      )}
    </Notice>
  );
}
