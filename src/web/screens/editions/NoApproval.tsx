import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { workStages } from '../../../records/work.ts';
import { approvalsKey, listApprovals } from '../../client/series.ts';
import { openWork, workKey } from '../../client/works.ts';
import { GrainedAway } from '../../parts/GrainedAway.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { workStageWords } from '../../parts/stageWords.ts';
import { say } from '../../words/say.ts';

/** Says plainly where no edition can be printed: the stone was grained, no pull is good to print, or it is not there yet. */
export function NoApproval({ workId, linked = true }: { workId: string; linked?: boolean }) {
  const approvals = useQuery({ queryKey: approvalsKey(workId), queryFn: () => listApprovals(workId) });
  const work = useQuery({ queryKey: workKey(workId), queryFn: () => openWork(workId) });
  if (!approvals.data || !work.data) return null;
  if (work.data.stage === 'regrained') return <GrainedAway work={work.data} linked={linked} />;
  if (approvals.data.some(({ withdrawn }) => withdrawn === null)) return null;
  const { stage } = work.data;
  const early = workStages.indexOf(stage) < workStages.indexOf('proofs');
  return (
    <Notice kind="caution" title={say('No pull is good to print:')}>
      {say('there is no standard to print to{early}.', {
        early:
          early &&
          say(', and this stone is only at “{workStageWords}”', { workStageWords: workStageWords[stage] }),
      })}{' '}
      {linked && <Link href={`/works/${workId}/proofs/good`}>{say('What is missing')}</Link>}
    </Notice>
  );
}
