import './NewWork.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import type { Edge } from '../../records/stone.ts';
import type { StoneSummary } from '../../records/stoneEntry.ts';
import { type WorkStage, workStages } from '../../records/work.ts';
import { factsBefore } from '../../studio/stones/workHistory.ts';
import { type ShownFailure, shownFailure } from '../client/shownFailure.ts';
import { listStones, stonesKey } from '../client/stones.ts';
import { worksKey } from '../client/workList.ts';
import { addWork, workKey } from '../client/works.ts';
import { emptyWorkToStart, missingOfWork, type WorkToStart, workInputOf } from '../managers/workToStart.ts';
import { Button, ButtonLink } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { EmptyPage } from '../parts/EmptyPage.tsx';
import { FailureNotice } from '../parts/FailureNotice.tsx';
import { Field } from '../parts/Field.tsx';
import { factWords } from '../parts/factWords.ts';
import { HeadEdge } from '../parts/HeadEdge.tsx';
import { Notice } from '../parts/Notice.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { Picks } from '../parts/Picks.tsx';
import { StoneFace } from '../parts/StoneFace.tsx';
import { workStageWords } from '../parts/stageWords.ts';
import { stoneTint } from '../parts/stoneTint.ts';
import { sizeWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';

/** Starting a work on a stone, from the grain or halfway; of its past only what can be known is asked for. */
export default function NewWork() {
  const asked = new URLSearchParams(useSearch()).get('stone') ?? '';
  const [work, setWork] = useState<WorkToStart>({ ...emptyWorkToStart, stoneId: asked });
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const [sending, setSending] = useState(false);
  const queries = useQueryClient();
  const [, go] = useLocation();
  const found = useQuery({
    queryKey: [...stonesKey, 'in use'],
    queryFn: ({ signal }) => listStones({ search: '', putBy: 'no' }, null, signal, 500),
  });
  const stones = found.data?.stones ?? [];
  const stone = stones.find(({ id }) => id === work.stoneId);
  const missing = missingOfWork(work);
  const set = (changes: Partial<WorkToStart>) => setWork((now) => ({ ...now, ...changes }));
  const start = async () => {
    setSending(true);
    setTrouble(null);
    try {
      const entry = await addWork(workInputOf(work));
      queries.setQueryData(workKey(entry.id), entry);
      void queries.invalidateQueries({ queryKey: worksKey });
      void queries.invalidateQueries({ queryKey: stonesKey });
      go(`/works/${entry.id}`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
      setSending(false);
    }
  };

  if (found.isSuccess && stones.length === 0) return <NoStone />;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void start();
      }}
    >
      <PageHead
        stamp={say('A new work')}
        headline={
          stone ? say('What is drawn on {stone}?', { stone: stone.name }) : say('Which stone is it on?')
        }
      />
      <div className="new-work">
        <div className="new-work-facts">
          <Choice
            label={say('Stone')}
            value={work.stoneId}
            options={[
              ...(stone ? [] : [['', say('choose a stone')] as const]),
              ...stones.map(
                ({ id, name, widthMm, heightMm, colour }) =>
                  [
                    id,
                    say('{name}, {size}{colour}', {
                      name,
                      size: sizeWords(widthMm, heightMm),
                      colour: colour && `, ${colour}`,
                    }),
                  ] as const,
              ),
            ]}
            onChoose={(stoneId) => set({ stoneId })}
          />
          {stone?.work && stone.work.stage !== 'regrained' && (
            <Notice
              kind="caution"
              title={say('“{title}” is on it: {workStageWords}.', {
                title: stone.work.title,
                workStageWords: workStageWords[stone.work.stage],
              })}
            >
              {say('A stone can carry several works, side by side or one after the other.')}
            </Notice>
          )}
          <Field
            label={say('Title')}
            autoComplete="off"
            maxLength={200}
            value={work.title}
            onChange={(event) => set({ title: event.target.value })}
          />
          {stone && <HeadEdge head={work.head} {...stone} onPick={(head) => set({ head })} />}
          <Picks
            label={say('Where does it begin?')}
            value={work.begins}
            options={[
              ['new', say('On a fresh grain')],
              ['halfway', say('It is already on its way')],
            ]}
            onPick={(begins) => set({ begins })}
          />
        </div>
        {work.begins === 'halfway' && <Past work={work} onChange={set} />}
        <div className="new-work-start">
          {trouble && <FailureNotice failure={trouble} />}
          <Button kind="act" type="submit" disabled={missing !== null || sending}>
            {sending ? say('Starting …') : say('Start the work')}
          </Button>
          {missing && (
            <p className="soft">
              {missing === 'stone' ? say('A stone is needed first.') : say('It needs a title.')}
            </p>
          )}
        </div>
        {stone && <StoneLying stone={stone} head={work.head} />}
      </div>
    </form>
  );
}

/** The chosen stone on the bed, with its head and the borders that have to stay free. */
function StoneLying({ stone, head }: { stone: StoneSummary; head: Edge }) {
  const { name, widthMm, heightMm, colour } = stone;
  const around = Math.max(widthMm, heightMm) * 0.07;
  return (
    <figure className="new-work-stone" style={stoneTint(colour)}>
      <svg
        viewBox={`${-around} ${-around} ${widthMm + 2 * around} ${heightMm + 2 * around}`}
        role="img"
        aria-label={say('{name} from above, its head at the {head}', { name, head })}
      >
        <StoneFace
          view={{ pxPerMm: 1, offsetPx: [0, 0] }}
          stoneMm={[widthMm, heightMm]}
          head={head}
          rectangle={null}
          bare
        />
      </svg>
      <figcaption>
        {sayRich(
          '<span>{name}</span> {size}{colour}. Dotted: what the drawing should leave free for gum, wider at the ends, where the scraper lands.',
          {
            span: (words) => <span className="big">{words}</span>,
            name,
            size: sizeWords(widthMm, heightMm),
            colour: colour && `, ${colour}`,
          },
        )}
      </figcaption>
    </figure>
  );
}

/** What happened before: asked only up to the stage, and nothing of it is needed. */
function Past({ work, onChange }: { work: WorkToStart; onChange: (changes: Partial<WorkToStart>) => void }) {
  return (
    <section className="new-work-past" aria-labelledby="past">
      <h2 id="past" className="big">
        {say('What is known of its past')}
      </h2>
      <p className="soft">
        {say('Leave empty what nobody knows: it is kept as unknown, and never guessed.')}
      </p>
      <Choice<WorkStage>
        label={say('What was done last')}
        value={work.stage}
        options={workStages
          .filter((stage) => stage !== 'regrained')
          .map((stage) => [stage, workStageWords[stage]])}
        onChoose={(stage) => onChange({ stage })}
      />
      <Picks
        label={say('Does it lie under gum now?')}
        value={work.gummed}
        options={[
          ['yes', say('Yes')],
          ['no', say('No')],
          ['unknown', say('Not known')],
        ]}
        onPick={(gummed) => onChange({ gummed })}
      />
      {factsBefore(work.stage).map((fact) => (
        <Field
          key={fact}
          label={factWords[fact].asks}
          placeholder={say('not known')}
          hint={say('Such as “{such}”.', { such: factWords[fact].such })}
          maxLength={2000}
          value={work.facts[fact] ?? ''}
          onChange={(event) => onChange({ facts: { ...work.facts, [fact]: event.target.value } })}
        />
      ))}
    </section>
  );
}

function NoStone() {
  return (
    <>
      <PageHead stamp={say('A new work')} headline={say('A work needs a stone')} />
      <EmptyPage
        stone
        title={say('No stone on the rack yet')}
        act={
          <ButtonLink kind="act" href="/stones/new">
            {say('Enter a stone')}
          </ButtonLink>
        }
      >
        <p>{say('First enter the stone that it is on: name, width and height are enough.')}</p>
      </EmptyPage>
    </>
  );
}
