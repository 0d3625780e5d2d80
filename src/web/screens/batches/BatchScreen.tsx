import '../entries/Entries.css';
import { Link } from 'wouter';
import type { BatchEntry } from '../../../records/batch.ts';
import { batchesKey, batchKey, openBatch, putBatchBy, saveBatch } from '../../client/batches.ts';
import { labelsPage } from '../../client/labels.ts';
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
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { BatchFields } from './BatchFields.tsx';

/** One batch: what is known of it, to be added to as it is measured. */
export default function BatchScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="batch"
      list={{ href: '/batches', stamp: say('Batch log'), words: say('To the batch log') }}
      entryKey={batchKey(id)}
      open={() => openBatch(id)}
    >
      {(batch) => <BatchPage batch={batch} />}
    </OpenEntry>
  );
}

function BatchPage({ batch }: { batch: BatchEntry }) {
  const keep = useKeepEntry<BatchEntry>(batchKey, batchesKey);
  return (
    <>
      <PageHead
        stamp={
          <>
            <Link href="/batches">{say('Batch log')}</Link> · {batchKindWords[batch.kind]} · {ageWords(batch)}
          </>
        }
        headline={batch.name}
      />
      <div className="entry-body beside">
        <div className="entry-cautions">
          {batchCautions(batch).map((caution) => (
            <Notice key={caution} kind="caution" title={say('Mind:')}>
              {caution}
            </Notice>
          ))}
        </div>
        <KeptEntry
          entry={batch}
          listHref="/batches"
          words={{ out: say('It is used up'), back: say('Put it back in use') }}
          keep={keep}
          setPutBy={(putBy) => putBatchBy(batch.id, batch.version, putBy)}
        >
          {(onSaved, key) => <BatchForm key={key} batch={batch} onSaved={onSaved} />}
        </KeptEntry>
        <Link href={labelsPage({ batches: [batch.id] })}>{say('A label for the bottle')}</Link>
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
    <SaveForm
      label={batch.name}
      act={say('Save the batch')}
      form={form}
      words={batchFieldWords}
      onSave={save}
    >
      <BatchFields kind={kind} form={form} />
    </SaveForm>
  );
}
