import '../entries/Entries.css';
import { Link } from 'wouter';
import type { KitEntry } from '../../../records/kit.ts';
import { kitEntryKey, kitKey, openKit, putKitBy, saveKit } from '../../client/kit.ts';
import { type KitTyped, kitFieldWords, kitOfTyped, kitToolWords, kitTyped } from '../../managers/kitForm.ts';
import { KitFields } from '../../parts/KitFields.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';

/** One tool or set-up: what is known of it, and the way out of the kit. */
export default function KitScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="tool or set-up"
      list={{ href: '/kit', stamp: say('Kit'), words: say('To the kit') }}
      entryKey={kitEntryKey(id)}
      open={() => openKit(id)}
    >
      {(entry) => <KitPage entry={entry} />}
    </OpenEntry>
  );
}

function KitPage({ entry }: { entry: KitEntry }) {
  const keep = useKeepEntry<KitEntry>(kitEntryKey, kitKey);
  return (
    <>
      <PageHead
        stamp={
          <>
            <Link href="/kit">{say('Kit')}</Link> · {kitToolWords[entry.tool]}
          </>
        }
        headline={entry.name}
      />
      <div className="entry-body">
        <KeptEntry
          entry={entry}
          listHref="/kit"
          words={{ out: say('It is no longer used'), back: say('It is used again') }}
          keep={keep}
          setPutBy={(putBy) => putKitBy(entry.id, entry.version, putBy)}
        >
          {(onSaved, key) => <KitForm key={key} entry={entry} onSaved={onSaved} />}
        </KeptEntry>
        <p className="soft">
          {say('Logs keep the words that it was picked with; a change here leaves them as they are.')}
        </p>
      </div>
    </>
  );
}

function KitForm({ entry, onSaved }: { entry: KitEntry; onSaved: (kept: KitEntry) => void }) {
  const { tool } = entry;
  const form = useTypedForm<KitEntry, KitTyped>({
    entry,
    typedOf: (kept) => kitTyped(kept!),
    check: (typed) => kitOfTyped(tool, typed).troubles,
    send: (typed, kept) => saveKit(entry.id, kept!.version, kitOfTyped(tool, typed).draft!),
  });
  const save = async () => {
    const kept = await form.save();
    if (kept) onSaved(kept);
    return kept;
  };
  return (
    <SaveForm label={entry.name} act={say('Save it')} form={form} words={kitFieldWords(tool)} onSave={save}>
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
  );
}
