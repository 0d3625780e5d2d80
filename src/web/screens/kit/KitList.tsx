import { told } from '../../words/told.ts';
import '../entries/Entries.css';
import { memo, useState } from 'react';
import { Link } from 'wouter';
import type { KitEntry, KitTool } from '../../../records/kit.ts';
import { factsOf } from '../../../studio/bench/kitWords.ts';
import { kitKey, listKit } from '../../client/kit.ts';
import { kitToolWords } from '../../managers/kitForm.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { midSentence } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

const tools: readonly (readonly [KitTool | 'all', string])[] = [
  ['all', say('All')],
  ['roller', say('Rollers')],
  ['ink', say('Inks')],
  ['press', say('Press set-ups')],
  ['cloth', say('Cloths')],
  ['paper', say('Papers')],
];

/** What to do first. */
const first = (
  <p>
    {say(
      'Begin with the roller and the press set-up that are in use now. At the bench they are picked by a touch, never typed, and the log keeps what was known of them that day.',
    )}
  </p>
);

/** The studio's own tools and set-ups: what can be picked at the bench. */
export default function KitList() {
  const [tool, setTool] = useState<KitTool | 'all'>('all');
  const {
    pages,
    items: kit,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: [...kitKey, 'list'],
    narrowing: [tool === 'all' ? '' : tool],
    read: (asked, after, signal) => listKit({ ...asked, tool: tool === 'all' ? null : tool }, after, signal),
    itemsOf: (page) => page.kit,
  });
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage
      stamp={<Link href="/mixing">{say('Mixing and kit')}</Link>}
      headline={nothingYet ? say('The kit') : say('What is worked with')}
      act={{ href: '/kit/new', words: say('Enter a tool') }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle={say('Nothing is in the kit yet')}
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label={say('Search names and notes')} typed={list.typed} onType={list.setTyped}>
          <Picks
            label={say('Which tools')}
            shownLabel={false}
            value={tool}
            options={tools}
            onPick={setTool}
          />
          <Picks<Shelf>
            label={say('In use or taken out')}
            shownLabel={false}
            value={list.putBy}
            options={[
              ['no', say('In use')],
              ['yes', say('Taken out')],
            ]}
            onPick={list.setPutBy}
          />
        </ListTools>
      )}
      <FoundStatus found={settled && narrowed ? kit.length : null} />
      {kit.length > 0 && (
        <ul className="entry-lines" aria-label={say('The kit')}>
          {kit.map((entry) => (
            <KitLine key={entry.id} entry={entry} />
          ))}
        </ul>
      )}
      {settled && narrowed && kit.length === 0 && (
        <p className="list-foot">
          {say('Nothing of the kit is found so. Ask for any tool, or for fewer words.')}
        </p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>{say('Show what was entered before')}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

/** Typing in the search draws the page anew at every key; lines that stay are left alone. */
const KitLine = memo(function KitLine({ entry }: { entry: KitEntry }) {
  const facts = factsOf(entry);
  return (
    <li>
      <Link href={`/kit/${entry.id}`}>
        <span className="entry-name">
          <b className="big">{entry.name}</b>
          <span className="soft">{midSentence(kitToolWords[entry.tool])}</span>
        </span>
        <span>{facts.length > 0 ? facts.map(told).join(', ') : say('nothing noted of it')}</span>
      </Link>
    </li>
  );
});
