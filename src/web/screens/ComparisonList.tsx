import './ComparisonList.css';
import { useDeferredValue, useState } from 'react';
import { Link } from 'wouter';
import { listComparisons } from '../client/comparisons.ts';
import { listKey } from '../client/events.ts';
import { FoundStatus } from '../parts/FoundStatus.tsx';
import { ListPage } from '../parts/ListPage.tsx';
import { RackItem } from '../parts/RackItem.tsx';
import { ShowMore } from '../parts/ShowMore.tsx';
import { StoneSlab } from '../parts/StoneSlab.tsx';
import { say } from '../words/say.ts';
import { usePages } from './usePages.ts';

/** What to do first. */
const first = (
  <p>
    {say(
      'First photograph a drawn stone, then a print pulled from it, both square and under the same light. Stonetone lays one on the other and says what was lost, what filled in, and whether that is more than the noise.',
    )}
  </p>
);

/** Every comparison of the room, standing on the rack with its finding. */
export function ComparisonList() {
  const [typed, setTyped] = useState('');
  const search = useDeferredValue(typed.trim());
  const pages = usePages([...listKey, search], (after) => listComparisons(search, after));
  const comparisons = pages.data?.pages.flatMap((page) => page.comparisons) ?? [];
  const nothingYet = pages.isSuccess && search === '' && comparisons.length === 0;
  const onlySample = search === '' && comparisons.length > 0 && comparisons.every(({ sample }) => sample);
  return (
    <ListPage
      stamp={say('Comparisons')}
      headline={say('What printed, against what was drawn')}
      act={{ href: '/new', words: say('Compare a print') }}
      failed={pages.error}
      empty={nothingYet}
      stones
      emptyTitle={say('Nothing on the rack yet')}
      emptyWords={first}
      noteClass="list-note"
    >
      {!nothingYet && (comparisons.length > 0 || search !== '') && !onlySample && (
        <search className="list-search">
          <label htmlFor="list-search">{say('Search titles and findings')}</label>
          <input
            id="list-search"
            type="search"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </search>
      )}
      <FoundStatus found={pages.isSuccess && search !== '' ? comparisons.length : null} />
      {comparisons.length > 0 && (
        <ul
          className={comparisons.length <= 2 && search === '' ? 'rack few' : 'rack'}
          aria-label={say('Comparisons')}
        >
          {comparisons.map((comparison) => (
            <RackItem key={comparison.id} comparison={comparison} />
          ))}
          {onlySample && <YoursBeside />}
        </ul>
      )}
      {search !== '' && pages.isSuccess && comparisons.length === 0 && (
        <p className="list-note">{say('Nothing here has “{search}” in its title or finding.', { search })}</p>
      )}
      {pages.hasNextPage && (
        <p className="list-note">
          <ShowMore pages={pages}>{say('Show older ones')}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

/** A bare stone beside the sample's: where one's own will stand. */
function YoursBeside() {
  return (
    <li className="rack-item">
      <Link href="/new">
        <span className="rack-stone">
          <StoneSlab>
            <span className="rack-bare" />
          </StoneSlab>
        </span>
        <span className="rack-words">
          <span className="rack-title">{say('Yours')}</span>
          <span className="big rack-finding">{say('Photograph a drawn stone and a print from it')}</span>
          <span className="soft">
            {say(
              'Stonetone lays one on the other and says what was lost, what filled in, and whether that is more than the noise.',
            )}
          </span>
        </span>
      </Link>
    </li>
  );
}
