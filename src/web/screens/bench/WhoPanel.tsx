import { useState } from 'react';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { TargetPicks } from './TargetPicks.tsx';

/** Says whose taps this screen logs, so that the log tells who did what. Others’ screens stay theirs. */
export function WhoPanel({
  people,
  who,
  onWho,
}: {
  people: readonly string[];
  who: string | null;
  onWho: (who: string | null) => void;
}) {
  const [typed, setTyped] = useState('');
  return (
    <>
      <TargetPicks
        label={say('This screen logs for')}
        value={who ?? ''}
        options={[...people.map((name) => [name, name] as const), ['', say('not said')]]}
        onPick={(name) => onWho(name || null)}
      />
      <form
        className="kit-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (typed.trim() !== '') onWho(typed.trim());
        }}
      >
        <Field
          label={say('Somebody else')}
          hint={say('Initials are enough, such as P.R.')}
          maxLength={100}
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
        <div className="kit-form-act">
          <Button kind="act" type="submit">
            {say('That is me')}
          </Button>
        </div>
      </form>
    </>
  );
}
