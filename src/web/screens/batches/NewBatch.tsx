import '../entries/Entries.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { BatchEntry, BatchKind } from '../../../records/batch.ts';
import { addBatch, batchesKey, batchKey } from '../../client/batches.ts';
import {
  type BatchTyped,
  batchFieldWords,
  batchKindWords,
  batchOfTyped,
  batchTroubles,
  batchTyped,
} from '../../managers/batchForm.ts';
import { localText } from '../../managers/localMoment.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { BatchFields } from './BatchFields.tsx';

const kinds = Object.entries(batchKindWords) as [BatchKind, string][];

/** Logs a batch; what its kind asks for follows from the kind. */
export default function NewBatch() {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const [kind, setKind] = useState<BatchKind>('gum');
  const [today] = useState(() => localText(new Date().toISOString()).slice(0, 10));
  const form = useTypedForm<BatchEntry, BatchTyped>({
    entry: null,
    shelf: say('new batch'),
    typedOf: () => batchTyped(null, today),
    check: (typed) => batchTroubles(kind, typed),
    send: (typed) => addBatch(batchOfTyped(kind, typed)),
  });
  /** What is mixed is taken to be mixed today; what is bought was not mixed here. */
  const pick = (next: BatchKind) => {
    const bought = next === 'washout' || next === 'base';
    const { madeOn } = form.values;
    if (bought && madeOn === today) form.set({ madeOn: '' });
    if (!bought && madeOn === '') form.set({ madeOn: today });
    setKind(next);
  };
  const log = async () => {
    const batch = await form.save();
    if (batch) {
      queries.setQueryData(batchKey(batch.id), batch);
      void queries.invalidateQueries({ queryKey: batchesKey });
      go('/batches');
    }
    return batch;
  };
  return (
    <>
      <PageHead
        stamp={<Link href="/batches">{say('Batch log')}</Link>}
        headline={say('What is in the bottle?')}
      />
      <div className="entry-body">
        <SaveForm
          label={say('A new batch')}
          act={say('Log the batch')}
          form={form}
          words={batchFieldWords}
          onSave={log}
        >
          <Picks label={say('It is')} value={kind} options={kinds} onPick={pick} />
          <BatchFields kind={kind} form={form} />
        </SaveForm>
      </div>
    </>
  );
}
