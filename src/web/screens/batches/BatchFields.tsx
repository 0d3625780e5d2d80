import type { BatchKind } from '../../../records/batch.ts';
import { type BatchTyped, batchFieldWords } from '../../managers/batchForm.ts';
import { Field } from '../../parts/Field.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import type { TypedForm } from '../useTypedForm.ts';

/** The fields of a batch, those of its kind only. */
export function BatchFields<Entry>({ kind, form }: { kind: BatchKind; form: TypedForm<Entry, BatchTyped> }) {
  const line = (field: keyof BatchTyped, more: { unit?: string; hint?: string; type?: string } = {}) => (
    <Field
      label={batchFieldWords[field]}
      {...more}
      {...(more.unit !== undefined || field === 'pH' ? { inputMode: 'decimal' as const } : {})}
      autoComplete="off"
      maxLength={200}
      value={form.values[field]}
      trouble={form.troubleOf(field)}
      onChange={(event) => form.set({ [field]: event.target.value })}
    />
  );
  return (
    <>
      {line('name', { hint: say('As it is written on it, such as “gum, 12 November”.') })}
      {kind === 'gum' && (
        <>
          <div className="fields">
            {line('madeOn', { type: 'date' })}
            {line('baume', { unit: '°Bé' })}
            {line('pH')}
          </div>
          <Picks
            label={batchFieldWords.smell}
            value={form.values.smell}
            options={[
              ['', say('not noted')],
              ['fresh', say('fresh')],
              ['sweet', say('sweet')],
              ['sour', say('sour')],
            ]}
            onPick={(smell) => form.set({ smell })}
          />
        </>
      )}
      {kind === 'tannic' && (
        <>
          <div className="fields">
            {line('madeOn', { type: 'date' })}
            {line('gramsPerLitre', { unit: 'g/l', hint: say('40 g/l is called 4 %.') })}
            {line('pH')}
          </div>
          <Picks
            label={batchFieldWords.gum}
            value={form.values.gum}
            options={[
              ['', say('not stated')],
              ['yes', say('yes')],
              ['no', say('no')],
            ]}
            onPick={(gum) => form.set({ gum })}
          />
        </>
      )}
      {(kind === 'washout' || kind === 'base') && (
        <>
          {line('product', { hint: say('As the maker calls it.') })}
          <div className="fields">
            {line('opened', { type: 'date' })}
            {line('lot')}
            {line('madeOn', { type: 'date', hint: say('If it was mixed here.') })}
          </div>
        </>
      )}
      <Words
        label={batchFieldWords.note}
        maxLength={10_000}
        value={form.values.note}
        onChange={(event) => form.set({ note: event.target.value })}
      />
    </>
  );
}
