import { type FormEvent, useState } from 'react';
import type { CopiesState } from '../../../records/copies.ts';
import { sendCopiesTo } from '../../client/copies.ts';
import { Button } from '../../parts/Button.tsx';
import { byteWords } from '../../parts/byteWords.ts';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';

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
    <form className="copies-folder" aria-label={say('Where copies go')} onSubmit={submit} noValidate>
      <Field
        label={say('Folder on this machine')}
        hint={say('Its whole path, such as /media/copies or D:\\copies. It must be there already.')}
        autoComplete="off"
        spellCheck={false}
        maxLength={2000}
        value={typed}
        trouble={missing ? say('A folder is needed.') : null}
        onChange={(event) => setTyped(event.target.value)}
      />
      <Button kind={folder === null ? 'act' : 'plain'} type="submit" disabled={pending}>
        {pending ? say('Looking at it …') : say('Send copies there')}
      </Button>
    </form>
  );
  if (folder === null) return form;
  return (
    <div className="copies-place">
      <p>
        {sayRich('They go to <b>{folder}</b>', { b: (words) => <b className="path">{words}</b>, folder })}
        {freeBytes !== null && (
          <span className="soft"> {say('with {byte} free', { byte: byteWords(freeBytes) })}</span>
        )}
      </p>
      <Fold title={say('Another folder, or no more copies')}>
        {form}
        <Button kind="quiet" disabled={pending || busy !== null} onClick={() => void send(null)}>
          {say('Make no more copies')}
        </Button>
        <p className="soft">{say('Those that were made stay where they are.')}</p>
      </Fold>
    </div>
  );
}
