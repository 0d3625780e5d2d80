import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** The form of an entry as long as it is in its list, and the way out of the list or back into it. */
export function KeptEntry<Entry extends { readonly putBy: boolean; readonly version: number }>({
  entry,
  listHref,
  words,
  keep,
  setPutBy,
  children,
}: {
  entry: Entry;
  listHref: string;
  /** What the way out and the way back are called. */
  words: { readonly out: string; readonly back: string };
  keep: (kept: Entry) => void;
  setPutBy: (putBy: boolean) => Promise<Entry>;
  /** The form, told what to do once it is saved; its key changes with every save. */
  children: (onSaved: (kept: Entry) => void, key: string) => ReactNode;
}) {
  const [saved, setSaved] = useState(false);
  const moving = useSaving<Entry>();
  const [, go] = useLocation();
  const move = async (putBy: boolean) => {
    const kept = await moving.send(() => setPutBy(putBy), keep);
    if (!kept) return;
    keep(kept);
    if (putBy) go(listHref);
  };
  const onSaved = (kept: Entry) => {
    keep(kept);
    setSaved(true);
  };
  return (
    <>
      {entry.putBy ? (
        <Button kind="act" onClick={() => void move(false)} disabled={moving.pending}>
          {words.back}
        </Button>
      ) : (
        <>
          {children(onSaved, saved ? String(entry.version) : 'open')}
          <p role="status">{saved ? say('Saved.') : ''}</p>
          <Button kind="quiet" onClick={() => void move(true)} disabled={moving.pending}>
            {words.out}
          </Button>
        </>
      )}
      {moving.trouble && <FailureNotice failure={moving.trouble} />}
    </>
  );
}
