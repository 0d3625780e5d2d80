import '../entries/Entries.css';
import { Link } from 'wouter';
import type { TestStone } from '../../../records/testStone.ts';
import { listTestStones, testStonesKey } from '../../client/testStones.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { useShelvedList } from '../useShelvedList.ts';

/** What to do first. */
const first = (
  <p>
    Begin with a stone that you have already: squares in rows, a medium in each, etched as you like. Give its
    size and how many rows and columns it has; then say what every row and column got, and add a photograph of
    the drawn stone and one of a print. Stonetone reads every square, and says what the stone can tell and
    what it can’t. With no stone yet, <Link href="/test-stones/plan">plan a test</Link>: say what you want to
    know, and it is laid out for you.
  </p>
);

/** Test stones: what was tried, and what held. */
export default function TestStoneList() {
  const { pages, items, narrowed, nothingYet, ...list } = useShelvedList({
    key: testStonesKey,
    read: listTestStones,
    itemsOf: (page) => page.testStones,
  });
  return (
    <ListPage
      stamp="Test stones"
      headline={nothingYet ? 'Test stones' : 'What was tried on stone'}
      act={{ href: '/test-stones/new', words: 'Enter a test stone' }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle="No test stone is here yet"
      emptyWords={first}
    >
      {!nothingYet && (
        <>
          <p className="list-foot">
            <ButtonLink href="/test-stones/plan">Plan a test</ButtonLink>
          </p>
          <ListTools label="Search names, media, etches" typed={list.typed} onType={list.setTyped} />
        </>
      )}
      <FoundStatus found={pages.isSuccess && !pages.isPlaceholderData && narrowed ? items.length : null} />
      {items.length > 0 && (
        <ul className="entry-lines" aria-label="Test stones">
          {items.map((stone) => (
            <StoneLine key={stone.id} stone={stone} />
          ))}
        </ul>
      )}
      {pages.isSuccess && !pages.isPlaceholderData && narrowed && items.length === 0 && (
        <p className="list-foot">No test stone is found so. Ask for fewer words.</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>Show older test stones</ShowMore>
        </p>
      )}
    </ListPage>
  );
}

function StoneLine({ stone }: { stone: TestStone }) {
  const { patches, factors, prints, drawn } = stone;
  const varied = factors.map(({ name }) => name).join(', ');
  const standing =
    drawn === null
      ? 'not photographed yet'
      : prints.length === 0
        ? 'no print yet'
        : `${prints.length} ${prints.length === 1 ? 'print' : 'prints'}`;
  return (
    <li>
      <Link href={`/test-stones/${stone.id}`}>
        <span className="entry-name">
          <b className="big">{stone.name}</b>
          <span className="soft">{varied === '' ? 'nothing typed yet' : varied}</span>
        </span>
        <span>{patches.length === 1 ? '1 patch' : `${patches.length} patches`}</span>
        <span className="entry-end">{standing}</span>
      </Link>
    </li>
  );
}
