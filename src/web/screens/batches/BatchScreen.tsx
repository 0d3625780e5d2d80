import './Batches.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { BatchEntry } from '../../../records/batch.ts';
import { archiveBatch, batchesKey, batchKey, openBatch, saveBatch } from '../../client/batches.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import {
  ageWords,
  type BatchTyped,
  batchCautions,
  batchFieldWords,
  batchKindWords,
  batchOfTyped,
  batchTroubles,
  batchTyped,
} from '../../managers/batchForm.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { useSaving } from '../useSaving.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { BatchFields } from './BatchFields.tsx';

/** One batch: what is known of it, to be added to as it is measured. */
export default function BatchScreen({ id }: { id: string }) {
  const batch = useQuery({ queryKey: batchKey(id), queryFn: () => openBatch(id) });
  if (batch.data) return <BatchPage batch={batch.data} />;
  if (batch.isPending) return <p className="unseen">Opening the batch …</p>;
  return (
    <>
      <PageHead stamp="Batch log" headline="This batch cannot be shown" />
      <div className="batch-body">
        <FailureNotice failure={shownFailure(batch.error)} />
        <ButtonLink href="/batches">To the batch log</ButtonLink>
      </div>
    </>
  );
}

function BatchPage({ batch }: { batch: BatchEntry }) {
  const queries = useQueryClient();
  const [saved, setSaved] = useState(false);
  const archiving = useSaving<BatchEntry>();
  const [, go] = useLocation();
  const keep = (kept: BatchEntry) => {
    queries.setQueryData(batchKey(kept.id), kept);
    void queries.invalidateQueries({ queryKey: batchesKey });
  };
  const archive = async (archived: boolean) => {
    const kept = await archiving.send(() => archiveBatch(batch.id, batch.version, archived), keep);
    if (kept) {
      keep(kept);
      if (archived) go('/batches');
    }
  };
  return (
    <>
      <PageHead
        stamp={
          <>
            <Link href="/batches">Batch log</Link> · {batchKindWords[batch.kind]} · {ageWords(batch)}
          </>
        }
        headline={batch.name}
      />
      <div className="batch-body beside">
        <div className="batch-cautions">
          {batchCautions(batch).map((caution) => (
            <Notice key={caution} kind="caution" title="Mind:">
              {caution}
            </Notice>
          ))}
        </div>
        {batch.archived ? (
          <Button kind="act" onClick={() => void archive(false)} disabled={archiving.pending}>
            Put it back in use
          </Button>
        ) : (
          <>
            <BatchForm
              key={saved ? batch.version : 'open'}
              batch={batch}
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
    </>
  );
}

function BatchForm({ batch, onSaved }: { batch: BatchEntry; onSaved: (kept: BatchEntry) => void }) {
  const { kind } = batch;
  const form = useTypedForm<BatchEntry, BatchTyped>({
    entry: batch,
    typedOf: (entry) => batchTyped(entry, ''),
    check: (typed) => batchTroubles(kind, typed),
    send: (typed, entry) => saveBatch(batch.id, entry!.version, batchOfTyped(kind, typed)),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  return (
    <SaveForm label={batch.name} act="Save the batch" form={form} words={batchFieldWords} onSave={save}>
      <BatchFields kind={kind} form={form} />
    </SaveForm>
  );
}
