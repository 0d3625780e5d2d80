import { useState } from 'react';
import type { PullFault } from '../../../records/pull.ts';
import type { PullEntry } from '../../../records/pullTones.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { savePull } from '../../client/pulls.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { useProofsChanged } from './useProofs.ts';

/** The faults of a pull: an open one stands against good to print until somebody says what was done about it. */
export function PullFaults({ work, pull }: { work: WorkEntry; pull: PullEntry }) {
  const changed = useProofsChanged(work.id);
  const saving = useSaving<PullEntry>();
  const [typed, setTyped] = useState('');
  const [closing, setClosing] = useState<number | null>(null);
  const open = pull.faults.filter(({ closed }) => closed === null).length;
  const keep = async (faults: readonly PullFault[]) => {
    if (!(await saving.send(() => savePull(work.id, pull.id, pull.version, { faults })))) return;
    setTyped('');
    setClosing(null);
    await changed();
  };
  const words = typed.trim();
  return (
    <section aria-labelledby="faults-head" className="pull-faults">
      <h2 id="faults-head">
        {open === 0
          ? say('No fault stands')
          : say('{open, plural, one {One fault stands} other {{open} faults stand}}', { open })}
      </h2>
      <ul>
        {pull.faults.map((fault, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: faults are only ever added at the end
          <li key={index}>
            <b>{fault.words}</b>{' '}
            {fault.closed ? (
              <span className="soft">
                {say('put right: {closed}', { closed: fault.closed.words || say('not said how') })}
              </span>
            ) : (
              <Button
                kind="quiet"
                aria-label={say('Put right: {fault}', { fault: fault.words })}
                onClick={() => setClosing(index)}
              >
                {say('Close it')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <form
        noValidate
        className="proofs-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (closing !== null) {
            const closed = { at: new Date().toISOString(), words };
            void keep(pull.faults.map((fault, at) => (at === closing ? { ...fault, closed } : fault)));
          } else if (words !== '') void keep([...pull.faults, { words, closed: null }]);
        }}
      >
        <Field
          label={
            closing === null
              ? say('A fault that has to go before good to print')
              : say('What was done about: {faults}', { faults: pull.faults[closing]!.words })
          }
          {...(closing === null && words === '' && { hint: say('Say the fault first, then note it.') })}
          autoComplete="off"
          maxLength={200}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
        {saving.trouble && <FailureNotice failure={saving.trouble} />}
        <Button type="submit" disabled={saving.pending || (closing === null && words === '')}>
          {closing === null ? say('Note the fault') : say('It is put right')}
        </Button>
      </form>
    </section>
  );
}
