import './UnsentPull.css';
import { useQueryClient } from '@tanstack/react-query';
import { useState, useSyncExternalStore } from 'react';
import { Link, useLocation } from 'wouter';
import type { Pull } from '../../../records/pull.ts';
import { newClientId } from '../../managers/bench/clientIds.ts';
import { heldIdOf } from '../../managers/held/heldName.ts';
import { missingWords } from '../../managers/held/missingWords.ts';
import type { ShownPull } from '../../managers/held/pullsToSend.ts';
import { draftOfTyped, nextPull } from '../../managers/proofs/pullDraft.ts';
import { pullFactsTyped, pullFactWords } from '../../managers/proofs/pullFacts.ts';
import { shelvedPull, shelvePull } from '../../managers/proofs/pullShelf.ts';
import { pullKindWords } from '../../managers/proofs/pullWords.ts';
import { Button, ButtonLink } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { heldPhotographs } from '../held/heldPhotographs.ts';
import { heldPulls } from '../held/heldPulls.ts';
import { sendHeld } from '../held/sendHeld.ts';
import { TakenPicture } from '../held/TakenPicture.tsx';
import { unsentPullWords } from '../held/unsentPullWords.ts';

/** A pull that was entered here and that the server does not have: what becomes of it, what it lacks, and all that was entered. */
export function UnsentPull({ shown, kept }: { shown: ShownPull; kept: readonly Pull[] }) {
  const queries = useQueryClient();
  const [, go] = useLocation();
  const toSend = heldPulls(queries);
  const photographs = heldPhotographs(queries);
  const { unreachable, waiting } = useSyncExternalStore(toSend.listen, toSend.current);
  const pictures = useSyncExternalStore(photographs.listen, photographs.current);
  const [throwing, setThrowing] = useState(false);
  const [keptOn, setKeptOn] = useState(false);
  const { pull, refusal } = shown;
  const { typed, workId } = pull;
  const at = `/works/${workId}/proofs`;
  const begun = shelvedPull(window.localStorage, workId, nextPull([])) !== null;
  const refusedPictures = typed.photographs.filter(({ photograph }) =>
    pictures.waiting.some(
      (one) => one.photograph.id === heldIdOf(photograph) && one.refusal && !one.refusal.forAll,
    ),
  );
  const numbers = [
    ...kept.map(({ number }) => number),
    ...(waiting ?? []).filter((one) => one.pull.workId === workId).map((one) => one.pull.typed.number),
  ];
  const free = Math.max(0, ...numbers) + 1;
  const hold = async (changes: Partial<typeof typed>) => {
    await toSend.hold({ ...pull, typed: { ...typed, ...changes } });
    void sendHeld(queries);
  };
  /** False where this browser’s storage does not answer: then the pull lies here as before. */
  const letGo = async (what: { readonly withPhotographs: boolean }) => {
    setKeptOn(false);
    try {
      await toSend.drop(typed.id, what);
      return true;
    } catch {
      setKeptOn(true);
      return false;
    }
  };
  const takeBack = async () => {
    // Under an id of its own: should the server have it after all, it says that the number is taken.
    const id = newClientId();
    shelvePull(window.localStorage, workId, { typed: { ...typed, id }, step: 'number' });
    if (await letGo({ withPhotographs: false })) return go(`${at}/new`);
    // else it would be entered twice
    shelvePull(window.localStorage, workId, null);
  };
  const throwAway = async () => {
    if (await letGo({ withPhotographs: true })) go(at);
  };
  return (
    <>
      <PageHead
        stamp={
          <>
            {pull.workTitle} · <Link href={at}>{say('Proofs')}</Link> · {pullKindWords[typed.kind]}
          </>
        }
        headline={
          refusal
            ? say('Pull {number} is kept here, not taken yet', { number: typed.number })
            : say('Pull {number} is kept here, not sent yet', { number: typed.number })
        }
      >
        <ButtonLink kind={refusal ? 'plain' : 'act'} href={`${at}/new`}>
          {begun ? say('Go on with the pull begun') : say('Enter the next pull')}
        </ButtonLink>
      </PageHead>
      <div className="unsent-pull">
        <div className="unsent-pull-pictures">
          {typed.photographs.map(({ photograph }, index) => (
            <TakenPicture
              key={photograph}
              photograph={photograph}
              widthPx={900}
              alt={
                index === 0 ? say('The photograph of the print') : say('The second photograph of the print')
              }
            />
          ))}
          {typed.photographs.length === 0 && <p className="soft">{say('It has no photograph.')}</p>}
        </div>
        <div className="unsent-pull-words">
          {refusal ? (
            <Notice kind="trouble" title={say('Stonetone answered and does not take it.')}>
              {told(refusal.message)} {told(refusal.remedy)}
            </Notice>
          ) : (
            <p className="unsent-pull-state" role="status">
              {unsentPullWords(shown, unreachable)}
            </p>
          )}
          <ul aria-label={say('What it lacks')}>
            {missingWords(pull, pictures).map((words) => (
              <li key={words} className="minded">
                {words}
              </li>
            ))}
          </ul>
          {refusal && (
            <Button
              kind="act"
              onClick={() => void hold(refusal.code === 'pull-number-taken' ? { number: free } : {})}
            >
              {refusal.code === 'pull-number-taken'
                ? say('Enter it as pull {number}', { number: free })
                : say('Send it again')}
            </Button>
          )}
          {refusedPictures.length > 0 && (
            <Button
              onClick={() =>
                void hold({ photographs: typed.photographs.filter((one) => !refusedPictures.includes(one)) })
              }
            >
              {say('Enter it without the photograph that is not taken')}
            </Button>
          )}
          <h2>{say('What was entered')}</h2>
          <Facts shown={shown} />
          {keptOn && (
            <Notice kind="trouble" title={say('It is kept here still.')}>
              {say('This browser’s storage did not answer. Nothing is lost; press again in a moment.')}
            </Notice>
          )}
          <div className="unsent-pull-acts">
            {begun ? (
              <p className="soft">
                {say('It can be taken back and changed once the pull begun is entered to its end.')}
              </p>
            ) : (
              <Button onClick={() => void takeBack()}>{say('Take it back and change it')}</Button>
            )}
            {throwing ? (
              <>
                <Button kind="danger" onClick={() => void throwAway()}>
                  {say('Throw pull {number} away for good', { number: typed.number })}
                </Button>
                <Button onClick={() => setThrowing(false)}>{say('Keep it')}</Button>
              </>
            ) : (
              <Button kind="quiet" onClick={() => setThrowing(true)}>
                {say('Throw it away')}
              </Button>
            )}
          </div>
        </div>
      </div>
    </>
  );
}

/** What was entered, word by word; what is not known is left out. */
function Facts({ shown: { pull } }: { shown: ShownPull }) {
  const draft = draftOfTyped(pull.typed, pull.enteredAt);
  if (!draft) return null;
  const told = { ...pullFactsTyped(draft), kind: pullKindWords[draft.kind] };
  return (
    <dl className="unsent-pull-facts">
      {Object.entries(pullFactWords).map(([fact, words]) => {
        const value = told[fact as keyof typeof told];
        return value === '' ? null : (
          <div key={fact}>
            <dt>{words}</dt>
            <dd>{fact === 'madeAt' ? value.replace('T', ' ') : value}</dd>
          </div>
        );
      })}
      {draft.faults.map(({ words }) => (
        <div key={words}>
          <dt>{say('A fault')}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
