import { useState } from 'react';
import type { LedgerEntry } from '../../../records/edition.ts';
import { say } from '../../words/say.ts';

/** Whose hands this screen logs for: somebody who printed before, or a name of one's own. */
export function PressWho({
  people,
  who,
  onWho,
}: {
  people: readonly string[];
  who: string | null;
  onWho: (who: string | null) => void;
}) {
  const [typed, setTyped] = useState('');
  const name = typed.trim();
  const all = [...people.map((one) => [one, one] as const), [say('not said'), null] as const];
  return (
    <>
      <fieldset className="press-targets">
        <legend>{say('This screen logs for')}</legend>
        {all.map(([words, value]) => (
          <button
            key={words}
            type="button"
            className="bench-target"
            aria-pressed={value === who}
            onClick={() => onWho(value)}
          >
            {words}
          </button>
        ))}
      </fieldset>
      <form
        className="press-say"
        onSubmit={(event) => {
          event.preventDefault();
          if (name !== '') onWho(name);
        }}
      >
        <label>
          {say('Somebody else: initials are enough')}
          <input
            maxLength={100}
            autoComplete="off"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <button type="submit" className="bench-target" disabled={name === ''}>
          {say('That is me')}
        </button>
        {name === '' && <p className="press-missing">{say('Write initials first, then press it.')}</p>}
      </form>
    </>
  );
}

/** Everybody who logged something in a ledger, and who this screen is, each once. */
export function peopleAtPress(entries: readonly LedgerEntry[], who: string | null): readonly string[] {
  const names = [...entries.map(({ actor }) => actor), who].filter((name) => name !== null);
  return [...new Set(names)].sort();
}
