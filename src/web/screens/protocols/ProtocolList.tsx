import { Link } from 'wouter';
import type { ForeignProtocol } from '../../../records/workProtocol.ts';
import { listProtocols, protocolsKey } from '../../client/protocols.ts';
import { dayWords } from '../../parts/entryWords.ts';
import { sizeWords } from '../../words/lengths.ts';
import { say } from '../../words/say.ts';
import { EntryListPage } from '../entries/EntryListPage.tsx';

/** What to do first. */
const first = (
  <p>
    {say(
      'Ask another studio that uses Stonetone for the protocol of a work “as a file”: it tells what was laid, how long, and what came of it. Brought in here, it can be read and laid beside a work of your own. Yours lies on each work’s page.',
    )}
  </p>
);

/** Protocols of other studios that are kept here, newest first. */
export default function ProtocolList() {
  return (
    <EntryListPage
      list={{ key: protocolsKey, read: listProtocols, itemsOf: (page) => page.protocols }}
      head={() => ({
        stamp: <Link href="/keeping">{say('Copies and labels')}</Link>,
        headline: say('Protocols of other studios'),
        act: { href: '/protocols/new', words: say('Bring one in') },
        emptyTitle: say('None was brought in yet'),
        emptyWords: first,
      })}
      search={say('Search titles')}
      shelves={say('Which protocols')}
      label={say('Protocols')}
      line={(kept) => <ProtocolEntry key={kept.id} kept={kept} />}
      noneFound={say('No protocol is found so. Ask for fewer words.')}
      older={say('Show older ones')}
    />
  );
}

function ProtocolEntry({ kept: { id, protocol, createdAt } }: { kept: ForeignProtocol }) {
  const { title, stone, etches } = protocol;
  return (
    <li>
      <Link href={`/protocols/${id}`}>
        <span className="entry-name">
          <b className="big">{title}</b>
        </span>
        <span>
          {say('{size}, {etched}', {
            size: sizeWords(stone.widthMm, stone.heightMm),
            etched: etchedWords(etches.length),
          })}
        </span>
        <span className="entry-end">{dayWords(createdAt)}</span>
      </Link>
    </li>
  );
}

function etchedWords(places: number): string {
  if (places === 0) return say('no etch is told');
  return say('{places, plural, one {one place etched} other {{places} places etched}}', { places });
}
