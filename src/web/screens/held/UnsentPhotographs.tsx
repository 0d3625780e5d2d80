import './UnsentPhotographs.css';
import { useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useSyncExternalStore } from 'react';
import type { PhotographBelongs } from '../../managers/held/heldPhotograph.ts';
import type { ShownPhotograph } from '../../managers/held/photographsToSend.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { BlobPicture } from './BlobPicture.tsx';
import { heldPhotographs } from './heldPhotographs.ts';
import { heldPulls } from './heldPulls.ts';

/** So many are shown at once, those that go first. */
const mostShown = 3;

/** The photographs that were taken here and are not entered yet, each with its picture and what becomes of it. */
export function UnsentPhotographs({ of = () => true }: { of?: (belongs: PhotographBelongs) => boolean }) {
  const queries = useQueryClient();
  const toSend = heldPhotographs(queries);
  const { waiting, unreachable } = useSyncExternalStore(toSend.listen, toSend.current);
  const pulls = useSyncExternalStore(heldPulls(queries).listen, heldPulls(queries).current).waiting ?? [];
  // what belongs to a pull that waits is shown with it
  const entered = new Set(pulls.map(({ pull }) => pull.typed.id));
  const shown = waiting.filter(
    ({ photograph: { belongs } }) =>
      of(belongs) && !(belongs.to === 'pull-draft' && entered.has(belongs.pull)),
  );
  if (shown.length === 0) return null;
  return (
    <ul className="unsent-photographs" aria-label={say('Photographs not sent yet')}>
      {shown.slice(0, mostShown).map((each) => (
        <li key={each.photograph.id}>
          <BlobPicture blob={each.photograph.blob} alt="" />
          <div>
            <p>
              {each.photograph.kept === null
                ? sayRich('<b>Not sent yet:</b> {shows}', { b: bold, shows: each.photograph.shows })
                : sayRich('<b>Sent:</b> {shows}', { b: bold, shows: each.photograph.shows })}
            </p>
            <p role="status">{stateWords(each, unreachable)}</p>
            {each.photograph.kept !== null && (
              <Button kind="quiet" onClick={() => void toSend.drop(each.photograph.id)}>
                {say('Take it off this list')}
              </Button>
            )}
            {each.refusal && !each.refusal.forAll && (
              <Button kind="quiet" onClick={() => void toSend.drop(each.photograph.id)}>
                {say('Throw this photograph away')}
              </Button>
            )}
          </div>
        </li>
      ))}
      {shown.length > mostShown && (
        <li className="unsent-more">
          {say(
            '{count, plural, one {# more waits} other {# more wait}}, in the order in which they were taken.',
            {
              count: shown.length - mostShown,
            },
          )}
        </li>
      )}
    </ul>
  );
}

const bold = (words: ReactNode) => <b>{words}</b>;

/** Where one that is sent is taken up; the others are entered by themselves. */
const whereTaken: Readonly<Partial<Record<PhotographBelongs['to'], string>>> = {
  'pull-draft': say('Open the pull that it was taken for, and go on there.'),
  reading: say('Open the pull that it was taken for, and go on there.'),
  comparison: say('Open the new comparison, and go on there.'),
};

function stateWords({ photograph, share, kept, refusal }: ShownPhotograph, unreachable: boolean): string {
  if (photograph.kept !== null) return whereTaken[photograph.belongs.to] ?? '';
  if (refusal)
    return say('Stonetone does not take it: {message} {remedy}', {
      message: refusal.message,
      remedy: refusal.remedy,
    });
  if (share !== null) return say('On its way, {share} %', { share: Math.round(share * 100) });
  if (kept === null) return say('This browser is still writing it down.');
  if (!kept) return say('This browser can’t keep it: leave the page open until it is sent.');
  return unreachable
    ? say('Stonetone does not answer. Kept here, also when this page is closed; sent by itself later.')
    : say('Kept here; sent by itself.');
}
