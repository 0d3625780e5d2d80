import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Hold, PatchFinding } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { logTestStone, testStoneKey } from '../../client/testStones.ts';
import { findingWords, holdWords, percentWords } from '../../managers/testStones/holdWords.ts';
import { findingName } from '../../managers/testStones/patchLetters.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { useSaving } from '../useSaving.ts';

type Told = Hold | 'unread';
const options: readonly (readonly [Told, string])[] = [
  ['held', holdWords.held],
  ['weak', holdWords.weak],
  ['lost', holdWords.lost],
  ['filled', holdWords.filled],
  ['unread', say('not to be read')],
];

/** One patch large: what it got, what the camera read, what was put right, and putting it right. */
export function CorrectPatch({
  stone,
  print,
  finding,
}: {
  stone: TestStone;
  print: string;
  finding: PatchFinding;
}) {
  const queries = useQueryClient();
  const saving = useSaving<unknown>();
  const [verdict, setVerdict] = useState<Told>(finding.hold ?? 'unread');
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  const { camera, patch, treatment, corrections } = finding;
  const name = findingName(finding);
  const ready = who.trim() !== '' && why.trim() !== '';
  const keep = async () => {
    const payload = { print, patch, hold: verdict === 'unread' ? null : verdict, why: why.trim() };
    const clientId = `correction-${patch}-${Date.now().toString(36)}`;
    const kept = await saving.send(() =>
      logTestStone(stone.id, { clientId, actor: who.trim(), kind: 'corrected', payload }),
    );
    if (kept === null) return;
    setWhy('');
    void queries.invalidateQueries({ queryKey: testStoneKey(stone.id) });
  };
  const levels = Object.entries(treatment).map(([factor, level]) => `${told(factor)}: ${told(level)}`);
  return (
    <section className="test-stone-picked" aria-label={say('Patch {patch}', { patch: name })}>
      <h2 className="big">
        {name}: {findingWords(finding)}
      </h2>
      <p>{levels.length === 0 ? say('What it got is not typed.') : levels.join('; ')}</p>
      <p>
        {say('Drawn {percent}, printed {percent2}{kept}.', {
          percent: percentWords(camera.drawn),
          percent2: percentWords(camera.printed),
          kept:
            camera.kept &&
            say('; kept {kept} % of it ({low} to {high})', {
              kept: Math.round(camera.kept.value * 100),
              low: Math.round(camera.kept.low * 100),
              high: Math.round(camera.kept.high * 100),
            }),
        })}
      </p>
      {camera.why && <p>{told(camera.why)}</p>}
      {corrections.length > 0 && (
        <ul>
          {corrections.map(({ hold, who: by, why: reason, at }) => (
            <li key={at}>
              {by}: {hold === null ? say('not to be read') : holdWords[hold]}, {reason}{' '}
              <span className="soft">({at.slice(0, 10)})</span>
            </li>
          ))}
          {camera.hold && (
            <li className="soft">{say('The camera: {holdWords}.', { holdWords: holdWords[camera.hold] })}</li>
          )}
        </ul>
      )}
      <Fold title={say('Put it right by hand')}>
        <form
          className="test-stone-form"
          aria-label={say('Put {patch} right', { patch: name })}
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <Picks<Told> label={say('It is')} value={verdict} options={options} onPick={setVerdict} />
          <Field label={say('Who says so')} value={who} onChange={(event) => setWho(event.target.value)} />
          <Field
            label={say('Why')}
            hint={say('The camera’s reading stays beside it.')}
            value={why}
            onChange={(event) => setWhy(event.target.value)}
          />
          {saving.trouble && <FailureNotice failure={saving.trouble} />}
          <Button type="submit" disabled={!ready || saving.pending}>
            {say('Keep the correction')}
          </Button>
        </form>
      </Fold>
    </section>
  );
}
