import './Inks.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { InkEntry } from '../../../records/ink.ts';
import { archiveInk, inkKey, inksKey, openInk, saveInk } from '../../client/inks.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { type InkTyped, inkFieldWords, inkOfTyped, inkTroubles, inkTyped } from '../../managers/inkForm.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { useSaving } from '../useSaving.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { InkFields } from './InkFields.tsx';
import { StringLog } from './StringLog.tsx';

/** One mix of ink: what is in it, how it behaved, and what the prints said. */
export default function InkScreen({ id }: { id: string }) {
  const ink = useQuery({ queryKey: inkKey(id), queryFn: () => openInk(id) });
  if (ink.data) return <InkPage ink={ink.data} />;
  if (ink.isPending) return <p className="unseen">Opening the mix …</p>;
  return (
    <>
      <PageHead stamp="Ink" headline="This mix cannot be shown" />
      <div className="ink-body">
        <FailureNotice failure={shownFailure(ink.error)} />
        <ButtonLink href="/inks">To the mixes of ink</ButtonLink>
      </div>
    </>
  );
}

function InkPage({ ink }: { ink: InkEntry }) {
  const queries = useQueryClient();
  const [saved, setSaved] = useState(false);
  const archiving = useSaving<InkEntry>();
  const [, go] = useLocation();
  const keep = (kept: InkEntry) => {
    queries.setQueryData(inkKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: inksKey });
  };
  const archive = async (archived: boolean) => {
    const kept = await archiving.send(() => archiveInk(ink.id, ink.version, archived), keep);
    if (kept) {
      keep(kept);
      if (archived) go('/inks');
    }
  };
  return (
    <>
      <PageHead
        stamp={
          <>
            <Link href="/inks">Ink</Link>
            {ink.workTitle && (
              <>
                {' '}
                · for <Link href={`/works/${ink.workId}`}>{ink.workTitle}</Link>
              </>
            )}
          </>
        }
        headline={ink.name}
      />
      <div className="ink-body">
        <div className="ink-form">
          {ink.archived ? (
            <Button kind="act" onClick={() => void archive(false)} disabled={archiving.pending}>
              Put it back on the list
            </Button>
          ) : (
            <>
              <InkForm
                ink={ink}
                onSaved={(kept) => {
                  keep(kept);
                  setSaved(true);
                }}
              />
              <p role="status">{saved ? 'Saved.' : ''}</p>
              <Button kind="quiet" onClick={() => void archive(true)} disabled={archiving.pending}>
                It is used up
              </Button>
            </>
          )}
          {archiving.trouble && <FailureNotice failure={archiving.trouble} />}
        </div>
        <StringLog ink={ink} onKept={keep} />
      </div>
    </>
  );
}

function InkForm({ ink, onSaved }: { ink: InkEntry; onSaved: (kept: InkEntry) => void }) {
  const form = useTypedForm<InkEntry, InkTyped>({
    entry: ink,
    typedOf: (entry) => inkTyped(entry, ''),
    check: inkTroubles,
    send: (typed, entry) => saveInk(ink.id, entry!.version, inkOfTyped(typed)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  return (
    <SaveForm label={ink.name} act="Save the mix" form={form} words={inkFieldWords} onSave={save}>
      <InkFields form={form} judged />
    </SaveForm>
  );
}
