import { type FormEvent, useState } from 'react';
import type { CopiesState } from '../../../records/copies.ts';
import { sendCopiesTo } from '../../client/copies.ts';
import { Button } from '../../parts/Button.tsx';
import { byteWords } from '../../parts/byteWords.ts';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';

/** Where copies go: to be chosen at first, to be changed later, or to be given up. */
export function CopiesFolder({
  state: { folder, freeBytes, busy },
  act,
}: {
  state: CopiesState;
  act: (asked: Promise<CopiesState>) => Promise<boolean>;
}) {
  const [typed, setTyped] = useState(folder ?? '');
  const [pending, setPending] = useState(false);
  const [missing, setMissing] = useState(false);
  const send = async (to: string | null) => {
    setPending(true);
    await act(sendCopiesTo(to));
    setPending(false);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setMissing(typed.trim() === '');
    if (typed.trim() !== '') void send(typed.trim());
  };
  const form = (
    <form className="copies-folder" aria-label="Where copies go" onSubmit={submit} noValidate>
      <Field
        label="Folder on this machine"
        hint="Its whole path, such as /media/copies or D:\copies. It must be there already."
        autoComplete="off"
        spellCheck={false}
        maxLength={2000}
        value={typed}
        trouble={missing ? 'A folder is needed.' : null}
        onChange={(event) => setTyped(event.target.value)}
      />
      <Button kind={folder === null ? 'act' : 'plain'} type="submit" disabled={pending}>
        {pending ? 'Looking at it …' : 'Send copies there'}
      </Button>
    </form>
  );
  if (folder === null) return form;
  return (
    <div className="copies-place">
      <p>
        They go to <b className="path">{folder}</b>
        {freeBytes !== null && <span className="soft"> with {byteWords(freeBytes)} free</span>}
      </p>
      <Fold title="Another folder, or no more copies">
        {form}
        <Button kind="quiet" disabled={pending || busy !== null} onClick={() => void send(null)}>
          Make no more copies
        </Button>
        <p className="soft">Those that were made stay where they are.</p>
      </Fold>
    </div>
  );
}
