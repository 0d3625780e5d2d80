import { useState } from 'react';
import { troubleKinds } from '../../managers/bench/troubleKinds.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import type { PanelParts } from './panelParts.ts';
import { TargetPicks } from './TargetPicks.tsx';

/** What a trouble was that one touch told: picked from a few, with own words where they are not enough. */
export function TroublePanel({ onLog }: Pick<PanelParts, 'onLog'>) {
  const [kind, setKind] = useState<string | null>(null);
  const [more, setMore] = useState('');
  const words = [kind, more.trim()].filter((each) => each).join(': ');
  return (
    <>
      <TargetPicks
        label={say('It was')}
        value={kind}
        options={troubleKinds.map((each) => [each, told(each)])}
        onPick={setKind}
      />
      <label className="trouble-words">
        {say('In your own words, if you like')}
        <input value={more} maxLength={300} onChange={(event) => setMore(event.target.value)} />
      </label>
      <button
        type="button"
        className="bench-target first"
        disabled={words === ''}
        onClick={() => onLog({ kind: 'note', payload: { about: 'trouble', words } })}
      >
        {words === '' ? say('Pick what it was') : say('Keep: {words}', { words })}
      </button>
    </>
  );
}
