import '../entries/Entries.css';
import { Link } from 'wouter';
import type { ForeignProtocol } from '../../../records/workProtocol.ts';
import { listProtocols, protocolsKey } from '../../client/protocols.ts';
import { dayWords } from '../../parts/entryWords.ts';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

/** What to do first. */
const first = (
  <p>
    Ask another studio that uses Stonetone for the protocol of a work “as a file”: it tells what was laid, how
    long, and what came of it. Brought in here, it can be read and laid beside a work of your own. Yours lies
    on each work’s page.
  </p>
);

/** Protocols of other studios that are kept here, newest first. */
export default function ProtocolList() {
  const {
    pages,
    items: protocols,
    narrowed,
    nothingYet,
    ...list
  } = useShelvedList({
    key: protocolsKey,
    read: listProtocols,
    itemsOf: (page) => page.protocols,
  });
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage
      stamp={<Link href="/keeping">Keeping</Link>}
      headline="Protocols of other studios"
      act={{ href: '/protocols/new', words: 'Bring one in' }}
      failed={pages.error}
      empty={nothingYet}
      emptyTitle="None was brought in yet"
      emptyWords={first}
    >
      {!nothingYet && (
        <ListTools label="Search titles" typed={list.typed} onType={list.setTyped}>
          <Picks<Shelf>
            label="Which protocols"
            shownLabel={false}
            value={list.archived}
            options={[
              ['no', 'In use'],
              ['yes', 'Put by'],
            ]}
            onPick={list.setArchived}
          />
        </ListTools>
      )}
      <FoundStatus found={settled && narrowed ? protocols.length : null} />
      {protocols.length > 0 && (
        <ul className="entry-lines" aria-label="Protocols">
          {protocols.map((kept) => (
            <ProtocolEntry key={kept.id} kept={kept} />
          ))}
        </ul>
      )}
      {settled && narrowed && protocols.length === 0 && (
        <p className="list-foot">No protocol is found so. Ask for fewer words.</p>
      )}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>Show older ones</ShowMore>
        </p>
      )}
    </ListPage>
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
          {stone.widthMm} × {stone.heightMm} mm, {etchedWords(etches.length)}
        </span>
        <span className="entry-end">{dayWords(createdAt)}</span>
      </Link>
    </li>
  );
}

function etchedWords(places: number): string {
  if (places === 0) return 'no etch is told';
  return places === 1 ? 'one place etched' : `${places} places etched`;
}
