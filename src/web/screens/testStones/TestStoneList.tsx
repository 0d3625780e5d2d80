import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { TestStone } from '../../../records/testStone.ts';
import { listTestStones, testStonesKey } from '../../client/testStones.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { told } from '../../words/told.ts';
import { EntryListPage } from '../entries/EntryListPage.tsx';

/** What to do first. */
const first = (
  <p>
    {sayRich(
      'Begin with a stone that you have already: squares in rows, a medium in each, etched as you like. Give its size and how many rows and columns it has; then say what every row and column got, and add a photograph of the drawn stone and one of a print. Stonetone reads every patch, and says what the stone can tell and what it can’t. With no stone yet, <link>plan a test</link>: say what you want to know, and it is laid out for you.',
      { link: (words) => <Link href="/test-stones/plan">{words}</Link> },
    )}
  </p>
);

/** Test stones: what was tried, and what held. */
export default function TestStoneList({ planned }: { planned: ReactNode }) {
  return (
    <EntryListPage
      list={{ key: testStonesKey, read: listTestStones, itemsOf: (page) => page.testStones }}
      head={(empty) => ({
        stamp: say('Test stones'),
        headline: empty ? say('Test stones') : say('What was tried on stone'),
        act: { href: '/test-stones/new', words: say('Enter a test stone') },
        stones: true,
        emptyTitle: say('No test stone is here yet'),
        emptyWords: (
          <>
            {first}
            {planned}
          </>
        ),
      })}
      above={
        <>
          {planned}
          <p className="list-foot">
            <ButtonLink href="/test-stones/plan">{say('Plan a test')}</ButtonLink>
          </p>
        </>
      }
      search={say('Search names, media, etches')}
      label={say('Test stones')}
      line={(stone) => <StoneLine key={stone.id} stone={stone} />}
      noneFound={say('No test stone is found so. Ask for fewer words.')}
      older={say('Show older test stones')}
    />
  );
}

function StoneLine({ stone }: { stone: TestStone }) {
  const { patches, factors, prints, drawn } = stone;
  const varied = factors.map(({ name }) => told(name)).join(', ');
  const standing =
    drawn === null
      ? say('not photographed yet')
      : prints.length === 0
        ? say('no print yet')
        : say('{count} {count, plural, one {print} other {prints}}', { count: prints.length });
  return (
    <li>
      <Link href={`/test-stones/${stone.id}`}>
        <span className="entry-name">
          <b className="big">{stone.name}</b>
          <span className="soft">{varied === '' ? say('nothing typed yet') : varied}</span>
        </span>
        <span>
          {say('{count, plural, one {1 patch} other {{count} patches}}', { count: patches.length })}
        </span>
        <span className="entry-end">{standing}</span>
      </Link>
    </li>
  );
}
