import { Link } from 'wouter';
import type { TestStone } from '../../../records/testStone.ts';
import { listTestStones, testStonesKey } from '../../client/testStones.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { EntryListPage } from '../entries/EntryListPage.tsx';

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
  return (
    <EntryListPage
      list={{ key: testStonesKey, read: listTestStones, itemsOf: (page) => page.testStones }}
      head={(empty) => ({
        stamp: 'Test stones',
        headline: empty ? 'Test stones' : 'What was tried on stone',
        act: { href: '/test-stones/new', words: 'Enter a test stone' },
        emptyTitle: 'No test stone is here yet',
        emptyWords: first,
      })}
      above={
        <p className="list-foot">
          <ButtonLink href="/test-stones/plan">Plan a test</ButtonLink>
        </p>
      }
      search="Search names, media, etches"
      label="Test stones"
      line={(stone) => <StoneLine key={stone.id} stone={stone} />}
      noneFound="No test stone is found so. Ask for fewer words."
      older="Show older test stones"
    />
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
