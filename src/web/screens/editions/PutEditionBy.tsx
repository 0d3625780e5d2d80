import type { Edition } from '../../../records/edition.ts';
import { putEditionBy } from '../../client/editions.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** Takes an edition off its work, or brings it back; nothing of it is lost either way. */
export function PutEditionBy({ edition, onKept }: { edition: Edition; onKept: (kept: Edition) => void }) {
  const saving = useSaving<Edition>();
  const put = async (putBy: boolean) => {
    const kept = await saving.send(() => putEditionBy(edition.id, edition.version, putBy), onKept);
    if (kept) onKept(kept);
  };
  const trouble = saving.trouble && <FailureNotice failure={saving.trouble} />;
  if (edition.putBy) {
    return (
      <>
        <Notice kind="aside" title={say('This edition was taken off its work.')}>
          {say('Its ledger and its numbers are kept. Nothing of it can be changed until it is back.')}
        </Notice>
        {trouble}
        <div>
          <Button disabled={saving.pending} onClick={() => void put(false)}>
            {say('Bring it back')}
          </Button>
        </div>
      </>
    );
  }
  return (
    <Fold title={say('Take this edition off its work')}>
      <p>{say('It leaves the list of the work. Its ledger, numbers and photographs are kept.')}</p>
      {trouble}
      <div>
        <Button disabled={saving.pending} onClick={() => void put(true)}>
          {say('Take it off')}
        </Button>
      </div>
    </Fold>
  );
}
