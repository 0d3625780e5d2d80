import { Told } from '../../parts/Told.tsx';
import './BenchFoot.css';
import { Link } from 'wouter';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import type { BenchSenses } from '../../managers/bench/benchSenses.ts';
import type { FreeHands } from '../../managers/bench/freeEtchView.ts';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { UnsentPhotographs } from '../held/UnsentPhotographs.tsx';
import { BenchMore } from './BenchMore.tsx';
import type { PanelName } from './panelParts.ts';

const switches = [
  ['voice', say('Voice')],
  ['sound', say('Sound')],
  ['buzz', say('Vibration')],
] as const;

const freeHands: readonly (readonly [FreeHands, string])[] = [
  [null, say('Alone')],
  [1, say('Person 1 of 2')],
  [2, say('Person 2 of 2')],
];

/** What stands back at the bench: how it calls, what to mind, and the way out. */
export function BenchFoot({
  work,
  kept,
  senses,
  onSenses,
  person,
  onPerson,
  free,
  who,
  onPanel,
  trouble,
  runId,
}: {
  runId: string;
  work: WorkEntry;
  /** The plan that leads; null where none does. */
  kept: KeptPlan | null;
  senses: BenchSenses;
  onSenses: (senses: BenchSenses) => void;
  person: number;
  onPerson: (person: number) => void;
  /** Who is there at an etch that no plan divides; null elsewhere. */
  free: { readonly hands: FreeHands; readonly onHands: (hands: FreeHands) => void } | null;
  who: string | null;
  onPanel: (panel: PanelName) => void;
  /** Whether a trouble waits to be said what it was. */
  trouble: boolean;
}) {
  const steps = kept?.plan.schedule.steps ?? [];
  const people = [...new Set(steps.map((step) => step.person))].sort((a, b) => a - b);
  const cautions = kept?.plan.cautions ?? [];
  return (
    <div className="bench-foot">
      <UnsentPhotographs of={(belongs) => belongs.to === 'work' && belongs.workId === work.id} />
      {(people.length > 1 || free) && (
        <section className="bench-switches" aria-labelledby="hands-head">
          <h2 id="hands-head" className="stamp">
            {say('Whose hands this screen leads')}
          </h2>
          {people.length > 1 &&
            people.map((each) => (
              <button
                key={each}
                type="button"
                aria-pressed={each === person}
                onMouseDown={(event) => event.preventDefault()}
                onClick={() => onPerson(each)}
              >
                {each === person
                  ? sayRich('Person {each} <b>here</b>', { each, b: (words) => <b>{words}</b> })
                  : sayRich('Person {each} <b></b>', { each, b: (words) => <b>{words}</b> })}
              </button>
            ))}
          {free &&
            freeHands.map(([hands, name]) => (
              <button
                key={name}
                type="button"
                aria-pressed={hands === free.hands}
                onMouseDown={(event) => event.preventDefault()}
                onClick={() => free.onHands(hands)}
              >
                {name} <b>{hands === free.hands ? say('here') : ''}</b>
              </button>
            ))}
        </section>
      )}
      {free && free.hands !== null && (
        <p>
          {say(
            'Person 1 has the first half of the places, which is the weaker one where strengths are known, person 2 the rest. Choose so on the other screen too.',
          )}
        </p>
      )}
      <BenchMore work={work} trouble={trouble} onPanel={onPanel} />
      <section className="bench-switches" aria-labelledby="calls-head">
        <h2 id="calls-head" className="stamp">
          {say('Who logs, and how it calls')}
        </h2>
        <button type="button" onClick={() => onPanel('who')}>
          {sayRich('Logged by <b>{who}</b>', { b: (words) => <b>{words}</b>, who: who ?? say('not said') })}
        </button>
        {switches.map(([sense, name]) => (
          <button
            key={sense}
            type="button"
            aria-pressed={senses[sense]}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => onSenses({ ...senses, [sense]: !senses[sense] })}
          >
            {name} <b>{senses[sense] ? say('on') : say('off')}</b>
          </button>
        ))}
      </section>
      {cautions.length > 0 && (
        <section aria-labelledby="mind-head" className="bench-mind">
          <h2 id="mind-head">{say('To mind')}</h2>
          <ul>
            {cautions.map((words) => (
              <li key={words}>
                <Told>{words}</Told>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="with-keys bench-keys">
        {say(
          'Space, arrow right or down, or pedal forward: what is lit. Arrow left or up, or pedal back, held: take back. T: trouble.',
        )}
      </p>
      <div className="bench-ways">
        <Link href={`/works/${work.id}`} className="bench-out">
          {say('Leave the bench')}
        </Link>
        <Link href={`/works/${work.id}/proofs`} className="bench-out">
          {say('The proofs')}
        </Link>
        <Link href={`/changes/runs/${runId}`} className="bench-out">
          {say('What changed?')}
        </Link>
        <Link href="/leaving" className="bench-out">
          {say('Leaving now')}
        </Link>
      </div>
    </div>
  );
}
