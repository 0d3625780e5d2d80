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
import { LatestComparison } from './LatestComparison.tsx';
import { useSettled } from './useSettled.ts';
import { type Shelf, useShelvedList } from './useShelvedList.ts';

/** What to do first. */
const first = (
  <>
    <p>
      First take a ruler to one stone: its name, width and height are enough. Thickness at the four corners
      tells its mass and whether it is a wedge; the rest can be written down when it is known.
    </p>
    <p>
      Or look first at what an invented studio printed from its stone:{' '}
      <Link href="/comparisons">the sample under Comparisons</Link>.
    </p>
  </>
);

/** Every stone of the room, standing on the rack in one scale with what is on it. */
export function StoneRack() {
  const {
    pages,
    items: stones,
    search,
    archived,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: stonesKey,
    read: listStones,
    itemsOf: (page) => page.stones,
  });
  const settled = useSettled(search);
  const whole = pages.isSuccess && !pages.hasNextPage && !narrowed;
  return (
    <ListPage
      stamp="Stones"
      headline={whole && stones.length > 0 ? rackFinding(stones) : 'The stones on the rack'}
      act={{ href: '/stones/new', words: 'Enter a stone' }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle="Nothing on the rack yet"
      emptyWords={first}
    >
      <ListTools label="Search name, colour, note" typed={list.typed} onType={list.setTyped}>
        <Picks<Shelf>
          label="Which stones"
          shownLabel={false}
          value={archived}
          options={[
            ['no', 'On the rack'],
            ['yes', 'Put by'],
          ]}
          onPick={list.setArchived}
        />
      </ListTools>
      <FoundStatus
        found={pages.isSuccess && !pages.isPlaceholderData && search !== '' ? stones.length : null}
      />
      {stones.length > 0 && (
        <div className="rack-wall" style={scaleOf(stones)}>
          <ul className="stone-rack" aria-label="Stones">
            {stones.map((stone) => (
              <StoneOnRack key={stone.id} stone={stone} settled={settled} />
            ))}
          </ul>
          <div className="list-foot">
            <ShowMore pages={pages}>Show more stones</ShowMore>
            <p className="soft rack-scale">100 mm; all faces in one scale, head up</p>
          </div>
        </div>
      )}
      {pages.isSuccess && !pages.isPlaceholderData && stones.length === 0 && !nothingYet && (
        <p className="list-foot">
          {search === ''
            ? 'No stone is put by.'
            : `No stone here has “${search}” in its name, colour or note.`}
        </p>
      )}
      {!narrowed && <LatestComparison />}
    </ListPage>
  );
}

/** How many stones there are and how many carry a work, in words. */
function rackFinding(stones: readonly StoneSummary[]): string {
  const worked = stones.filter(({ work }) => work !== null).length;
  const all = stones.length === 1 ? 'One stone' : `${stones.length} stones`;
  if (worked === 0) return `${all}, ${stones.length === 1 ? 'free' : 'all free'}`;
  if (worked === stones.length)
    return stones.length === 1 ? 'One stone, with a work on it' : `${all}, each with a work on it`;
  return `${all}, ${worked} with a work on ${worked === 1 ? 'it' : 'them'}`;
}

function scaleOf(stones: readonly StoneSummary[]): CSSProperties {
  const tallest = Math.max(...stones.map(({ heightMm }) => heightMm));
  const widest = Math.max(...stones.map(({ widthMm }) => widthMm));
  return { '--tallest': tallest, '--widest': widest } as CSSProperties;
}
