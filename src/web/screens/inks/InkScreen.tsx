import './Inks.css';
import { Link } from 'wouter';
import type { InkEntry } from '../../../records/ink.ts';
import { inkKey, inksKey, openInk, putInkBy, saveInk } from '../../client/inks.ts';
import { type InkTyped, inkFieldWords, inkOfTyped, inkTroubles, inkTyped } from '../../managers/inkForm.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { InkFields } from './InkFields.tsx';
import { StringLog } from './StringLog.tsx';

/** One mix of ink: what is in it, how it behaved, and what the prints said. */
export default function InkScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="mix"
      list={{ href: '/inks', stamp: say('Ink'), words: say('To the mixes of ink') }}
      entryKey={inkKey(id)}
      open={() => openInk(id)}
    >
      {(ink) => <InkPage ink={ink} />}
    </OpenEntry>
  );
}

function InkPage({ ink }: { ink: InkEntry }) {
  const keep = useKeepEntry<InkEntry>(inkKey, inksKey);
  return (
    <>
      <PageHead
        stamp={
          <>
            <Link href="/inks">{say('Ink')}</Link>
            {ink.workTitle && (
              <>
                {' '}
                {'· '}
                {sayRich('for <link>{workTitle}</link>', {
                  link: (words) => <Link href={`/works/${ink.workId}`}>{words}</Link>,
                  workTitle: ink.workTitle,
                })}
              </>
            )}
          </>
        }
        headline={ink.name}
      />
      <div className="ink-body">
        <div className="ink-form">
          <KeptEntry
            entry={ink}
            listHref="/inks"
            words={{ out: say('It is used up'), back: say('Put it back on the list') }}
            keep={keep}
            setPutBy={(putBy) => putInkBy(ink.id, ink.version, putBy)}
          >
            {(onSaved) => <InkForm ink={ink} onSaved={onSaved} />}
          </KeptEntry>
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
    <SaveForm label={ink.name} act={say('Save the mix')} form={form} words={inkFieldWords} onSave={save}>
      <InkFields form={form} judged />
    </SaveForm>
  );
}
