import type { LedgerEntry } from '../../../records/ledger.ts';
import { say } from '../../words/say.ts';
import { PressWords } from './PressWords.tsx';

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
      <PressWords
        label={say('Somebody else: initials are enough')}
        act={say('That is me')}
        missing={say('Write initials first, then press it.')}
        maxLength={100}
        onWords={onWho}
      />
    </>
  );
}

/** Everybody who logged something in a ledger, and who this screen is, each once. */
export function peopleAtPress(entries: readonly LedgerEntry[], who: string | null): readonly string[] {
  const names = [...entries.map(({ actor }) => actor), who].filter((name) => name !== null);
  return [...new Set(names)].sort();
}
