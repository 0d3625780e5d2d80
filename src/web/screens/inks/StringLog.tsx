import { type FormEvent, useState } from 'react';
import type { InkEntry } from '../../../records/ink.ts';
import { figuresInWords } from '../../../words/figuresInWords.ts';
import { saveInk } from '../../client/inks.ts';
import { numberTrouble, typedNumber } from '../../managers/typedNumber.ts';
import { Button } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';

/** How long a string of the mix was each time somebody tried it, and a line for the next. */
export function StringLog({ ink, onKept }: { ink: InkEntry; onKept: (kept: InkEntry) => void }) {
  const [cm, setCm] = useState('');
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const saving = useSaving<InkEntry>();
  const trouble = numberTrouble(cm, 0, 100, { needed: true });
  const log = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (trouble !== null) return;
    const reading = { at: new Date().toISOString(), cm: typedNumber(cm)!, note: note.trim() };
    const changes = { strings: [...ink.strings, reading] };
    const kept = await saving.send(() => saveInk(ink.id, ink.version, changes), onKept);
    if (!kept) return;
    onKept(kept);
    setCm('');
    setNote('');
    setTried(false);
  };
  return (
    <section className="ink-strings" aria-labelledby="strings-head">
      <h2 id="strings-head" className="big">
        {say('The string')}
      </h2>
      <p className="soft">
        {say(
          'Draw some up on the knife and see at what length it breaks. Printers often want 1 to 2 cm: common practice and memory, no source.',
        )}
      </p>
      {ink.strings.length > 0 && (
        <ul>
          {ink.strings.map((reading) => (
            <li key={`${reading.at} ${reading.cm}`}>
              <b className="big">{figuresInWords(`${reading.cm} cm`)}</b>
              <span>
                {dayWords(reading.at)}
                {reading.note && `, ${reading.note}`}
              </span>
            </li>
          ))}
        </ul>
      )}
      {!ink.putBy && (
        <form aria-label={say('Log a string')} noValidate onSubmit={(event) => void log(event)}>
          <div className="fields">
            <Field
              label={say('It broke at')}
              unit="cm"
              inputMode="decimal"
              autoComplete="off"
              value={cm}
              trouble={tried ? trouble : null}
              onChange={(event) => setCm(event.target.value)}
            />
            <Field
              label={say('Where, how')}
              autoComplete="off"
              maxLength={200}
              value={note}
              onChange={(event) => setNote(event.target.value)}
            />
          </div>
          <Button type="submit" disabled={saving.pending}>
            {say('Log the string')}
          </Button>
        </form>
      )}
      {saving.trouble && <FailureNotice failure={saving.trouble} />}
    </section>
  );
}
