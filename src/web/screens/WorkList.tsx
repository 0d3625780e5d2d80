import './WorkList.css';
import { useQuery } from '@tanstack/react-query';
import { memo, useId, useState } from 'react';
import { Link } from 'wouter';
import { type WorkStage, workStages } from '../../records/work.ts';
import type { WorkSummary } from '../../records/workEntry.ts';
import { lineRule } from '../../studio/bench/lineStages.ts';
import { deadlinesKey, listDeadlines } from '../client/days.ts';
import { listStones, stonesKey } from '../client/stones.ts';
import { listWorks, worksKey } from '../client/workList.ts';
import { dayText } from '../managers/localMoment.ts';
import { FoundStatus } from '../parts/FoundStatus.tsx';
import { GumMark } from '../parts/GumMark.tsx';
import { ListPage } from '../parts/ListPage.tsx';
import { ListTools } from '../parts/ListTools.tsx';
import { Picks } from '../parts/Picks.tsx';
import { ShowMore } from '../parts/ShowMore.tsx';
import { workStageWords } from '../parts/stageWords.ts';
import { weekdayAndTimeIn } from '../words/moments.ts';
import { say } from '../words/say.ts';
import { told } from '../words/told.ts';
import { type Shelf, useShelvedList } from './useShelvedList.ts';

/** What to do first. */
const first = (
  <p>
    {say(
      'A work is one image’s life on a stone. First say on which stone it is, and whether it begins on a fresh grain or is already on its way. Then draw its zones, and Stonetone plans an etch that fits them.',
    )}
  </p>
);

/** Every work of the room, last changed first, narrowed by words, stage and stone. */
export default function WorkList() {
  const [stage, setStage] = useState('');
  const [stone, setStone] = useState('');
  const due = useDeadlines();
  const {
    pages,
    items: works,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: worksKey,
    narrowing: [stage, stone],
    read: (asked, after, signal) =>
      listWorks(
        { ...asked, stage: (stage || null) as WorkStage | null, stone: stone || null },
        after,
        signal,
      ),
    itemsOf: (page) => page.works,
  });
  return (
    <ListPage
      stamp={say('Works')}
      headline={say('Drawings and their etches')}
      act={{ href: '/works/new', words: say('Start a work') }}
      failed={pages.error}
      empty={nothingYet}
      stones
      emptyTitle={say('No work on any stone yet')}
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label={say('Search title and stone')} typed={list.typed} onType={list.setTyped}>
          <Narrow label={say('Stage')} value={stage} onPick={setStage} all={say('any stage')}>
            {workStages.map((each) => (
              <option key={each} value={each}>
                {workStageWords[each]}
              </option>
            ))}
          </Narrow>
          <StoneChoice value={stone} onPick={setStone} />
          <Picks<Shelf>
            label={say('Which works')}
            shownLabel={false}
            value={list.putBy}
            options={[
              ['no', say('In use')],
              ['yes', say('Put by')],
            ]}
            onPick={list.setPutBy}
          />
        </ListTools>
      )}
      <FoundStatus found={pages.isSuccess && narrowed ? works.length : null} more={pages.hasNextPage} />
      {works.length > 0 && (
        <ul className="work-list" aria-label={say('Works')}>
          {works.map((work) => (
            <WorkLine key={work.id} work={work} due={due.get(work.id) ?? null} />
          ))}
        </ul>
      )}
      {pages.isSuccess && works.length === 0 && narrowed && (
        <p className="list-foot">
          {say('No work is found so. Ask for fewer words, another stage or any stone.')}
        </p>
      )}
      {pages.hasNextPage && (
        <div className="list-foot">
          <ShowMore pages={pages}>{say('Show older works')}</ShowMore>
        </div>
      )}
    </ListPage>
  );
}

/** What each work is to have reached by when, in the reader's own zone; the list does not wait for it. */
function useDeadlines(): ReadonlyMap<string, string> {
  const { data } = useQuery({ queryKey: deadlinesKey, queryFn: listDeadlines });
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  return new Map(
    (data ?? []).flatMap(({ workId, deadline }) =>
      deadline
        ? [
            [
              workId,
              say('{lineRule} by {moment}', {
                lineRule: told(lineRule(deadline.goal).name),
                moment: weekdayAndTimeIn(timeZone, Date.parse(deadline.by)),
              }),
            ],
          ]
        : [],
    ),
  );
}

/** Typing in the search draws the page anew at every key; lines that stay are left alone. */
const WorkLine = memo(function WorkLine({ work, due }: { work: WorkSummary; due: string | null }) {
  return (
    <li>
      <Link href={`/works/${work.id}`}>
        <span className="big work-line-stone">{work.stoneName}</span>
        <span className="work-line-title">
          <b>{work.title}</b>
          {work.halfway && <span className="soft"> {say('entered halfway')}</span>}
          {due && <span className="soft"> {due}</span>}
        </span>
        <span className="work-line-state">
          <span>{workStageWords[work.stage]}</span>
          {work.gum && <GumMark gum={work.gum} />}
        </span>
        <span className="work-line-zones">
          {work.zones === 0
            ? say('nothing drawn in')
            : say('{zones, plural, one {1 zone} other {{zones} zones}}', { zones: work.zones })}
        </span>
        <span className="soft work-line-day">{dayText(work.changedAt)}</span>
      </Link>
    </li>
  );
});

function Narrow({
  label,
  value,
  all,
  onPick,
  children,
}: {
  label: string;
  value: string;
  all: string;
  onPick: (value: string) => void;
  children: React.ReactNode;
}) {
  const id = useId();
  return (
    <div className="work-narrow">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.target.value)}>
        <option value="">{all}</option>
        {children}
      </select>
    </div>
  );
}

/** The stones to choose from come when they are here; the list does not wait for them. */
function StoneChoice({ value, onPick }: { value: string; onPick: (value: string) => void }) {
  const stones = useQuery({
    queryKey: [...stonesKey, 'to choose from'],
    queryFn: ({ signal }) => listStones({ search: '', putBy: 'all' }, null, signal, 500),
  });
  return (
    <Narrow label={say('Stone')} value={value} onPick={onPick} all={say('any stone')}>
      {(stones.data?.stones ?? []).map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </Narrow>
  );
}
