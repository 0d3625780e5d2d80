import { useQuery } from '@tanstack/react-query';
import { useLocation, useSearch } from 'wouter';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { openPull, pullKey, putPullBy } from '../../client/pulls.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { useProofsChanged } from './useProofs.ts';

/** After a pull was laid aside: says so, and brings it back, in case the wrong one was touched. */
export function LaidAside({ work }: { work: WorkEntry }) {
  const id = new URLSearchParams(useSearch()).get('aside');
  const [, go] = useLocation();
  const changed = useProofsChanged(work.id);
  const saving = useSaving<PullEntry>();
  const pull = useQuery({
    queryKey: pullKey(work.id, id ?? ''),
    queryFn: () => openPull(work.id, id!),
    enabled: id !== null,
  }).data;
  if (!pull?.putBy) return null;
  const back = async () => {
    if (!(await saving.send(() => putPullBy(work.id, pull.id, pull.version, false)))) return;
    await changed();
    go(`/works/${work.id}/proofs`);
  };
  return (
    <section className="laid-aside" aria-label={say('Laid aside')}>
      <p role="status">{say('Pull {number} is laid aside; its number is free.', { number: pull.number })}</p>
      <Button kind="quiet" disabled={saving.pending} onClick={() => void back()}>
        {say('Put it back with the others')}
      </Button>
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
    </section>
  );
}
