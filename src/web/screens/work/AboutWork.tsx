import './AboutWork.css';
import { useState } from 'react';
import { Link } from 'wouter';
import { type WorkDraft, type WorkStage, workStages } from '../../../records/work.ts';
import { inPageWords } from '../../client/inPageWords.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { putWorkBy } from '../../client/works.ts';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { factWords } from '../../parts/factWords.ts';
import { workStageWords } from '../../parts/stageWords.ts';
import { Words } from '../../parts/Words.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { WorkStanding } from '../rack/StoneStanding.tsx';
import { EtchBoard } from './EtchBoard.tsx';
import type { WorkDesk } from './useWorkDesk.ts';
import { WorkPage } from './WorkPage.tsx';

type Facts = Pick<WorkDraft, 'title' | 'stage' | 'note' | 'origin'>;

/** What is known of the work beside its drawing: title, stage, note, and its past where it came in halfway. */
export function AboutWork({ desk }: { desk: WorkDesk }) {
  const { work } = desk;
  const [typed, setTyped] = useState<Partial<Facts>>({});
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const facts: Facts = { ...work, ...typed };
  const changed = Object.keys(typed).length > 0;
  const set = (changes: Partial<Facts>) => setTyped((now) => ({ ...now, ...changes }));
  const save = async () => {
    if (await desk.change(() => ({ ...typed, title: facts.title.trim() }))) setTyped({});
  };
  const put = async () => {
    setTrouble(null);
    try {
      desk.adopt(await putWorkBy(work.id, work.version, !work.putBy));
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    }
  };
  const shownTrouble = trouble ?? desk.trouble;
  const notSaved = work.putBy
    ? say('It is put by: bring it back first.')
    : facts.title.trim() === ''
      ? say('It needs a title.')
      : changed
        ? null
        : say('Nothing is changed yet.');
  return (
    <WorkPage
      work={work}
      headline={work.putBy ? say('{title} is put by', { title: work.title }) : work.title}
      board={<EtchBoard desk={desk} kept={null} pointed={null} />}
      side={
        <form
          className="about-work"
          onSubmit={(event) => {
            event.preventDefault();
            void save();
          }}
        >
          <p>
            {sayRich('On stone <link>{stone}</link>.', {
              link: (words) => <Link href={`/stones/${work.stoneId}`}>{words}</Link>,
              stone: work.stone.name,
            })}
          </p>
          <p>
            <Link href={`/changes/works/${work.id}`}>{say('What changed? Compare with another work')}</Link>
          </p>
          <p>
            <Link href={`/inks/new?work=${work.id}`}>{say('Mix ink for it')}</Link>
          </p>
          <p>
            <a href={inPageWords(`/api/works/${work.id}/protocol.pdf`)}>
              {say('Protocol for another studio')}
            </a>{' '}
            <span className="soft">{say('PDF')}</span>,{' '}
            <a href={`/api/works/${work.id}/protocol.json`}>{say('as a file')}</a>{' '}
            <span className="soft">{say('JSON')}</span>
          </p>
          <p>
            <a href={inPageWords(`/api/works/${work.id}/book.pdf`)}>{say('Book of the work')}</a>{' '}
            <span className="soft">{say('PDF')}</span>
          </p>
          <WorkStanding work={work.id} />
          <Field
            label={say('Title')}
            autoComplete="off"
            maxLength={200}
            value={facts.title}
            trouble={facts.title.trim() === '' ? say('It needs a title.') : null}
            onChange={(event) => set({ title: event.target.value })}
          />
          <Choice<WorkStage>
            label={say('What was done last')}
            value={facts.stage}
            options={workStages.map((stage) => [stage, workStageWords[stage]])}
            onChoose={(stage) => set({ stage })}
          />
          <Words
            label={say('Note')}
            maxLength={10_000}
            value={facts.note}
            onChange={(event) => set({ note: event.target.value })}
          />
          {facts.origin.kind === 'halfway' && (
            <PastFields origin={facts.origin} onOrigin={(origin) => set({ origin })} />
          )}
          {shownTrouble && <FailureNotice failure={shownTrouble} />}
          <Button kind="quiet" onClick={() => void put()}>
            {work.putBy ? say('Bring it back') : say('Put the work by')}
          </Button>
          <div className={notSaved === null ? 'work-act' : 'work-act resting'}>
            <Button kind="act" type="submit" disabled={desk.saving || notSaved !== null}>
              {desk.saving ? say('Saving …') : say('Save')}
            </Button>
            {notSaved !== null && <p className="soft">{notSaved}</p>}
          </div>
        </form>
      }
    />
  );
}

/** What is known of the time before it was entered; what is left empty stays unknown. */
function PastFields({
  origin,
  onOrigin,
}: {
  origin: Extract<WorkDraft['origin'], { kind: 'halfway' }>;
  onOrigin: (origin: WorkDraft['origin']) => void;
}) {
  const gummed = {
    yes: say('under gum'),
    no: say('not under gum'),
    unknown: say('gummed or not: not known'),
  };
  return (
    <section aria-labelledby="past-head" className="about-past">
      <h2 id="past-head" className="big">
        {say('Its past')}
      </h2>
      <p className="soft">
        {say('Entered {workStageWords}; {gummed}. What nobody knows stays empty.', {
          workStageWords: workStageWords[origin.stage],
          gummed: gummed[origin.gummed],
        })}
      </p>
      {origin.history.map(({ fact, value }) => (
        <Field
          key={fact}
          label={factWords[fact].asks}
          placeholder={say('not known')}
          autoComplete="off"
          maxLength={2000}
          value={value ?? ''}
          onChange={(event) =>
            onOrigin({
              ...origin,
              history: origin.history.map((each) =>
                each.fact === fact ? { fact, value: event.target.value || null } : each,
              ),
            })
          }
        />
      ))}
    </section>
  );
}
