import '../entries/Entries.css';
import { memo, useState } from 'react';
import { Link } from 'wouter';
import type { InkEntry, InkVerdict } from '../../../records/ink.ts';
import { inksKey, listInks } from '../../client/inks.ts';
import { inkFacts, inkVerdictWords } from '../../managers/inkForm.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { say } from '../../words/say.ts';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

const verdicts: readonly (readonly [InkVerdict | 'all', string])[] = [
  ['all', say('All')],
  ['good', say('Printed well')],
  ['too soft', say('Too soft')],
  ['too stiff', say('Too stiff')],
];

/** What to do first. */
const first = (
  <p>
    {say(
      'Log what is on the slab now: how much soft and stiff ink by weight, what modifier, and at what length a string of it breaks. When it has printed, say what the prints said: the next mix can start from it.',
    )}
  </p>
);

/** Mixes of ink: what was in them and what the prints said. */
export default function InkList() {
  const [verdict, setVerdict] = useState<InkVerdict | 'all'>('all');
  const {
    pages,
    items: inks,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: inksKey,
    narrowing: [verdict === 'all' ? '' : verdict],
    read: (asked, after, signal) =>
      listInks({ ...asked, verdict: verdict === 'all' ? null : verdict }, after, signal),
    itemsOf: (page) => page.inks,
  });
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage
      stamp={<Link href="/mixing">{say('Mixing and kit')}</Link>}
      headline={nothingYet ? say('Ink') : say('Which ink printed how?')}
      act={{ href: '/inks/new', words: say('Log a mix') }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle={say('No mix of ink is logged yet')}
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label={say('Search names and notes')} typed={list.typed} onType={list.setTyped}>
          <Picks
            label={say('What the prints said')}
            shownLabel={false}
            value={verdict}
            options={verdicts}
            onPick={setVerdict}
          />
          <Picks<Shelf>
            label={say('Which mixes')}
            shownLabel={false}
            value={list.putBy}
            options={[
              ['no', say('In use')],
              ['yes', say('Used up')],
            ]}
            onPick={list.setPutBy}
          />
        </ListTools>
      )}
      <FoundStatus found={settled && narrowed ? inks.length : null} />
      {inks.length > 0 && (
        <ul className="entry-lines" aria-label={say('Mixes of ink')}>
          {inks.map((ink) => (
            <InkLine key={ink.id} ink={ink} />
          ))}
        </ul>
      )}
      {settled && narrowed && inks.length === 0 && (
        <p className="list-foot">{say('No mix is found so. Ask for any, or for fewer words.')}</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>{say('Show older mixes')}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

/** Typing in the search draws the page anew at every key; lines that stay are left alone. */
const InkLine = memo(function InkLine({ ink }: { ink: InkEntry }) {
  return (
    <li>
      <Link href={`/inks/${ink.id}`}>
        <span className="entry-name">
          <b className="big">{ink.name}</b>
          <span className="soft">
            {ink.workTitle
              ? say('for {workTitle}', { workTitle: ink.workTitle })
              : say('for no work in particular')}
          </span>
        </span>
        <span>{inkFacts(ink).join(', ')}</span>
        <span className="entry-end">
          {ink.verdict ? inkVerdictWords[ink.verdict] : say('not judged yet')}
        </span>
      </Link>
    </li>
  );
});
