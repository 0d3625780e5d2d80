import './AddPull.css';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { chipsTrouble } from '../../managers/chipBoxes.ts';
import { heldIdOf } from '../../managers/held/heldName.ts';
import {
  nextPull,
  type PullStep,
  type PullTyped,
  pullSteps,
  stepsOf,
} from '../../managers/proofs/pullDraft.ts';
import { shelvedPull, shelvePull } from '../../managers/proofs/pullShelf.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { useSentNames } from '../held/useSentNames.ts';
import { ProofsStamp } from './ProofsStamp.tsx';
import { PullStepFields } from './PullStepFields.tsx';
import { questionOf } from './pullQuestions.ts';
import { useKeepPull } from './useKeepPull.ts';
import type { ProofsPageParts } from './useProofs.ts';
import { usePullsHere } from './usePullsHere.ts';

/** Enters a pull by one question after another; what was used last stands there already. */
export function AddPull({ work, proofs }: ProofsPageParts) {
  const [, go] = useLocation();
  const keeping = useKeepPull(work);
  const pulls = usePullsHere(work.id, proofs.pulls);
  const [{ typed, step }, setHeld] = useState(() => {
    const begin = nextPull(pulls);
    const first: PullStep = 'number';
    return shelvedPull(window.localStorage, work.id, begin) ?? { typed: begin, step: first };
  });
  const hold = (next: { readonly typed: PullTyped; readonly step: PullStep }) => {
    setHeld(next);
    shelvePull(window.localStorage, work.id, next);
  };
  const markable = work.rectangle !== null;
  // Asked for once: where this room's own σ is known, a pull is photographed twice only before something is blamed.
  const askTwice = proofs.series.noise.origin !== 'repeats';
  const steps = stepsOf(typed, markable, askTwice);
  const at = Math.max(0, steps.indexOf(step));
  const now = steps[at]!;
  const set = (changes: Partial<PullTyped>) => hold({ typed: { ...typed, ...changes }, step: now });
  /** Goes on from what is typed with `changes`: an answer may be all that a step asks for. */
  const goOn = (changes: Partial<PullTyped> = {}) => {
    const next = { ...typed, ...changes };
    const then = stepsOf(next, markable, askTwice);
    // A step that is no longer asked for gives way to the one that followed it.
    const after = pullSteps.slice(pullSteps.indexOf(now) + 1).find((one) => then.includes(one));
    hold({ typed: next, step: after ?? then.at(-1)! });
    window.scrollTo(0, 0);
  };
  const back = () => hold({ typed, step: steps[Math.max(0, at - 1)]! });
  useSentNames(typed.photographs, (photographs) => hold({ typed: { ...typed, photographs }, step: now }));
  const keep = async () => {
    if (typed.paper === null) return hold({ typed, step: 'paper' });
    const then = await keeping.keep(typed);
    if (then === null) return;
    shelvePull(window.localStorage, work.id, null);
    go(`/works/${work.id}/proofs/${typed.id}${then === 'kept' ? '/answer' : ''}`);
  };
  const unsent = typed.photographs.some(({ photograph }) => heldIdOf(photograph) !== null);
  const once = now === 'again' && typed.photographs.length < 2;
  const last = at === steps.length - 1;
  const chipStep = now === 'chips' || now === 'chips-again';
  const seen = typed.photographs[now === 'chips-again' ? 1 : 0]?.chips ?? [];
  const chipTrouble = chipStep ? chipsTrouble(seen) : null;
  // Chips are asked for where they lie on the photographs of this work, and can be told of where the marks are set.
  const tellOfChips =
    !typed.chipped && now === (markable ? 'marks' : 'again') && typed.photographs.length > 0;
  const { question, why } = questionOf(now, typed);
  return (
    <div className="add-pull">
      <PageHead
        key={now}
        stamp={
          <>
            <ProofsStamp work={work} here={say('Pull {number}', { number: typed.number })} /> ·{' '}
            {say(
              '{left, plural, =0 {the last question} one {one more question after it} other {# more questions after it}}',
              { left: steps.length - 1 - at },
            )}
          </>
        }
        headline={question}
      />
      <form
        className="add-pull-step"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (last) void keep();
          else goOn();
        }}
      >
        {why && <p className="add-pull-why">{why}</p>}
        <PullStepFields
          key={now}
          step={now}
          typed={typed}
          pulls={pulls}
          work={work}
          onSet={set}
          onGoOn={goOn}
        />
        {unsent && now !== 'photograph' && (
          <p className="add-pull-note">
            {say(
              'Its photograph is kept here and sent by itself. Marks and grey chips can be set once it is sent; without marks the print is looked for by itself.',
            )}
          </p>
        )}
        {keeping.trouble && <FailureNotice failure={keeping.trouble} />}
        {keeping.trouble?.code === 'pull-number-taken' && (
          <Button onClick={() => hold({ typed, step: 'number' })}>{say('Change its number')}</Button>
        )}
        <div className="add-pull-acts">
          {now !== 'photograph' && (
            <Button
              kind={once ? 'plain' : 'act'}
              type="submit"
              disabled={keeping.pending || (now === 'paper' && typed.paper === null) || chipTrouble !== null}
            >
              {last
                ? keeping.pending
                  ? say('Keeping it …')
                  : say('Keep pull {number}', { number: typed.number })
                : once
                  ? say('Once is enough')
                  : say('Next')}
            </Button>
          )}
          {at > 0 && (
            <Button kind="quiet" onClick={back}>
              {say('Back')}
            </Button>
          )}
          {tellOfChips && (
            <Button kind="quiet" onClick={() => hold({ typed: { ...typed, chipped: true }, step: 'chips' })}>
              {say('Grey chips lie beside it')}
            </Button>
          )}
          {chipStep && (
            <Button
              kind="quiet"
              onClick={() => {
                const chipless = typed.photographs.map((each) => ({ ...each, chips: [] }));
                goOn({ chipped: false, photographs: chipless });
              }}
            >
              {say('There are none')}
            </Button>
          )}
          {chipTrouble && seen.length > 0 && <p className="add-pull-note">{chipTrouble}</p>}
          {now === 'paper' && typed.paper === null && (
            <p className="add-pull-note">{say('Name the paper first: every pull needs one.')}</p>
          )}
        </div>
      </form>
    </div>
  );
}
