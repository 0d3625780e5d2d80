import type { CSSProperties } from 'react';
import { Link } from 'wouter';
import type { StoneSummary } from '../../records/stoneEntry.ts';
import { listStones, stonesKey } from '../client/stones.ts';
import { FoundStatus } from '../parts/FoundStatus.tsx';
import { ListPage } from '../parts/ListPage.tsx';
import { ListTools } from '../parts/ListTools.tsx';
import { Picks } from '../parts/Picks.tsx';
import { ShowMore } from '../parts/ShowMore.tsx';
import { StoneOnRack } from '../parts/StoneOnRack.tsx';
import { lengthWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';
import { sayRich } from '../words/sayRich.ts';
import { LatestComparison } from './LatestComparison.tsx';
import { type Shelf, useShelvedList } from './useShelvedList.ts';

/** What to do first. */
const first = (
  <>
    <p>
      {say(
        'First take a ruler to one stone: its name, width and height are enough. Thickness at the four corners tells its mass and whether it is a wedge; the rest can be written down when it is known.',
      )}
    </p>
    <p>
      {sayRich(
        'Or look first at what an invented studio printed from its stone: <link>the sample under Comparisons</link>.',
        { link: (words) => <Link href="/comparisons">{words}</Link> },
      )}
    </p>
  </>
);

/** Every stone of the room, standing on the rack in one scale with what is on it. */
export function StoneRack() {
  const {
    pages,
    items: stones,
    search,
    putBy,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: stonesKey,
    read: listStones,
    itemsOf: (page) => page.stones,
  });
  const whole = pages.isSuccess && !pages.hasNextPage && !narrowed;
  return (
    <ListPage
      stamp={say('Stones')}
      headline={whole && stones.length > 0 ? rackFinding(stones) : say('The stones on the rack')}
      act={{ href: '/stones/new', words: say('Enter a stone') }}
      failed={pages.error}
      empty={nothingYet}
      stones
      emptyTitle={say('Nothing on the rack yet')}
      emptyWords={first}
    >
      <ListTools label={say('Search name, colour, note')} typed={list.typed} onType={list.setTyped}>
        <Picks<Shelf>
          label={say('Which stones')}
          shownLabel={false}
          value={putBy}
          options={[
            ['no', say('On the rack')],
            ['yes', say('Off the rack')],
          ]}
          onPick={list.setPutBy}
        />
      </ListTools>
      <FoundStatus
        found={pages.isSuccess && !pages.isPlaceholderData && search !== '' ? stones.length : null}
      />
      {stones.length > 0 && (
        <div className="rack-wall" style={scaleOf(stones)}>
          <ul className="stone-rack" aria-label={say('Stones')}>
            {stones.map((stone) => (
              <StoneOnRack key={stone.id} stone={stone} />
            ))}
          </ul>
          <div className="list-foot">
            <ShowMore pages={pages}>{say('Show more stones')}</ShowMore>
            <p className="soft rack-scale">
              {say('{length}; all faces in one scale, head up', { length: lengthWords(100) })}
            </p>
          </div>
        </div>
      )}
      {pages.isSuccess && !pages.isPlaceholderData && stones.length === 0 && !nothingYet && (
        <p className="list-foot">
          {search === ''
            ? say('No stone is off the rack.')
            : say('No stone here has “{search}” in its name, colour or note.', { search })}
        </p>
      )}
      {!narrowed && <LatestComparison />}
    </ListPage>
  );
}

/** How many stones there are and how many carry a work, in words; what was grained away lies on none. */
function rackFinding(stones: readonly StoneSummary[]): string {
  const worked = stones.filter(({ work }) => work !== null && work.stage !== 'regrained').length;
  const all = say('{count, plural, one {One stone} other {{count} stones}}', { count: stones.length });
  if (worked === 0)
    return say('{all}, {count, plural, one {free} other {all free}}', { all, count: stones.length });
  if (worked === stones.length)
    return say('{count, plural, one {One stone, with a work on it} other {{all}, each with a work on it}}', {
      count: stones.length,
      all,
    });
  return say('{all}, {worked} with a work on {worked, plural, one {it} other {them}}', { all, worked });
}

function scaleOf(stones: readonly StoneSummary[]): CSSProperties {
  const tallest = Math.max(...stones.map(({ heightMm }) => heightMm));
  const widest = Math.max(...stones.map(({ widthMm }) => widthMm));
  return { '--tallest': tallest, '--widest': widest } as CSSProperties;
}
