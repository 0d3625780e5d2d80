import './Inks.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import type { InkEntry } from '../../../records/ink.ts';
import { addInk, inkKey, inksKey } from '../../client/inks.ts';
import { type InkTyped, inkFieldWords, inkOfTyped, inkTroubles, inkTyped } from '../../managers/inkForm.ts';
import { localText } from '../../managers/localMoment.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { InkFields } from './InkFields.tsx';
import { InkStart } from './InkStart.tsx';

/** Logs a mix of ink; the work in the question, if any, is the one that it is made for. */
export default function NewInk() {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const asked = new URLSearchParams(useSearch()).get('work') ?? '';
  const [today] = useState(() => localText(new Date().toISOString()).slice(0, 10));
  const form = useTypedForm<InkEntry, InkTyped>({
    entry: null,
    shelf: say('new ink {asked}', { asked }),
    typedOf: () => inkTyped(null, today, asked),
    check: inkTroubles,
    send: (typed) => addInk({ ...inkOfTyped(typed), strings: [] }),
  });
  const log = async () => {
    const ink = await form.save();
    if (ink) {
      queries.setQueryData(inkKey(ink.id), ink);
      void queries.invalidateQueries({ queryKey: inksKey });
      go(`/inks/${ink.id}`);
    }
    return ink;
  };
  return (
    <>
      <PageHead stamp={<Link href="/inks">{say('Ink')}</Link>} headline={say('What is on the slab?')} />
      <div className="ink-body">
        <SaveForm
          label={say('A new mix')}
          act={say('Log the mix')}
          form={form}
          words={inkFieldWords}
          onSave={log}
        >
          <InkFields form={form} judged={false} />
        </SaveForm>
        <InkStart workId={form.values.workId || null} onTake={(typed) => form.set(typed)} />
      </div>
    </>
  );
}
