import { useState } from 'react';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { Approval } from '../../../records/workSeries.ts';
import { withdrawApproval } from '../../client/series.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { useReturnFocus } from '../useReturnFocus.ts';
import { useSaving } from '../useSaving.ts';
import { useProofsChanged } from './useProofs.ts';

/** Says of a pull that it is no longer good to print, with who and why; what depended on it is told on the same page then. */
export function WithdrawApproval({ work, approval }: { work: WorkEntry; approval: Approval }) {
  const changed = useProofsChanged(work.id);
  const saving = useSaving<Approval>();
  const [open, setOpen] = useState(false);
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  const [tried, setTried] = useState(false);
  const opener = useReturnFocus(open);
  if (!open)
    return (
      <Button ref={opener} onClick={() => setOpen(true)}>
        {say('It is no longer good to print')}
      </Button>
    );
  const withdraw = async () => {
    setTried(true);
    if (who.trim() === '' || why.trim() === '') return;
    const said = { who: who.trim(), why: why.trim() };
    if (await saving.send(() => withdrawApproval(work.id, approval.id, said))) await changed();
  };
  return (
    <form
      className="proofs-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void withdraw();
      }}
    >
      <Field
        label={say('Who says so')}
        autoComplete="off"
        maxLength={100}
        value={who}
        trouble={tried && who.trim() === '' ? say('Initials are needed.') : null}
        onChange={(event) => setWho(event.target.value)}
      />
      <Words
        label={say('Why')}
        hint={say('It stays in the history, with what had been printed to it.')}
        maxLength={2000}
        value={why}
        onChange={(event) => setWhy(event.target.value)}
      />
      {tried && why.trim() === '' && <p role="alert">{say('Say why: others will ask.')}</p>}
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
      <div className="proofs-act">
        <Button kind="danger" type="submit" disabled={saving.pending}>
          {say('No longer good to print')}
        </Button>
        <Button kind="quiet" onClick={() => setOpen(false)}>
          {say('Leave it standing')}
        </Button>
      </div>
    </form>
  );
}
