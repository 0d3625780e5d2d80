import '../entries/Entries.css';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { KitEntry, KitTool } from '../../../records/kit.ts';
import { addKit, kitEntryKey, kitKey } from '../../client/kit.ts';
import { type KitTyped, kitFields, kitFieldWords, kitOfTyped, kitToolWords } from '../../managers/kitForm.ts';
import { KitFields } from '../../parts/KitFields.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';

const tools = Object.entries(kitToolWords) as [KitTool, string][];
/** Of every tool: what was typed of another stays, should one come back to it. */
const nothing: KitTyped = Object.fromEntries([
  ['name', ''],
  ['note', ''],
  ...Object.values(kitFields).flatMap((fields) => fields.map(({ field }) => [field, ''])),
]);

/** Enters a tool or set-up; what is asked follows from what it is. */
export default function EnterKit() {
  const [, go] = useLocation();
  const [tool, setTool] = useState<KitTool>('roller');
  const keep = useKeepEntry<KitEntry>(kitEntryKey, kitKey);
  const form = useTypedForm<KitEntry, KitTyped>({
    entry: null,
    shelf: say('new tool'),
    typedOf: () => nothing,
    check: (typed) => kitOfTyped(tool, typed).troubles,
    send: (typed) => addKit(kitOfTyped(tool, typed).draft!),
  });
  const enter = async () => {
    const entry = await form.save();
    if (entry) {
      keep(entry);
      go('/kit');
    }
    return entry;
  };
  return (
    <>
      <PageHead stamp={<Link href="/kit">{say('Kit')}</Link>} headline={say('What is worked with?')} />
      <div className="entry-body">
        <SaveForm
          label={say('New in the kit')}
          act={say('Enter it')}
          form={form}
          words={kitFieldWords(tool)}
          onSave={enter}
        >
          <Picks label={say('It is')} value={tool} options={tools} onPick={setTool} />
          <KitFields
            tool={tool}
            typed={form.values}
            troubleOf={form.troubleOf}
            set={(field, value) => form.set({ [field]: value })}
          />
          <Words
            label={say('Note')}
            maxLength={10_000}
            value={form.values.note ?? ''}
            onChange={(event) => form.set({ note: event.target.value })}
          />
        </SaveForm>
      </div>
    </>
  );
}
