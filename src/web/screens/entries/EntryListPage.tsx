import { say } from '../../words/say.ts';
import './Entries.css';
import type { ReactNode } from 'react';
import { FoundStatus } from '../../parts/FoundStatus.tsx';
import { ListPage } from '../../parts/ListPage.tsx';
import { ListTools } from '../../parts/ListTools.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { ShowMore } from '../../parts/ShowMore.tsx';
import { type Shelf, useShelvedList } from '../useShelvedList.ts';

/** A list of entries, searched by words and read page by page; what was put by stands apart, where that is told. */
export function EntryListPage<Page extends { readonly next: string | null }, Item>({
  list: asked,
  head,
  above,
  search,
  shelves,
  label,
  line,
  noneFound,
  older,
}: {
  list: Parameters<typeof useShelvedList<Page, Item>>[0];
  /** @param empty whether there is nothing to list, however one asks */
  head: (empty: boolean) => {
    readonly stamp: ReactNode;
    readonly headline: string;
    readonly act: { readonly href: string; readonly words: string };
    readonly emptyTitle: string;
    /** What to do first. */
    readonly emptyWords: ReactNode;
    /** It lists stones, or work on them. */
    readonly stones?: boolean;
  };
  /** What stands above the tools, once there is something to list. */
  above?: ReactNode;
  /** What the line for words is called. */
  search: string;
  /** What the choice between those in use and those put by is called. */
  shelves?: string;
  /** What the list is called. */
  label: string;
  line: (item: Item) => ReactNode;
  noneFound: string;
  /** What the button for the next page says. */
  older: string;
}) {
  const { pages, items, narrowed, nothingYet, ...list } = useShelvedList(asked);
  const settled = pages.isSuccess && !pages.isPlaceholderData;
  return (
    <ListPage {...head(nothingYet)} failed={pages.error} empty={nothingYet}>
      {!nothingYet && (
        <>
          {above}
          <ListTools label={search} typed={list.typed} onType={list.setTyped}>
            {shelves !== undefined && (
              <Picks<Shelf>
                label={shelves}
                shownLabel={false}
                value={list.putBy}
                options={[
                  ['no', say('In use')],
                  ['yes', say('Put by')],
                ]}
                onPick={list.setPutBy}
              />
            )}
          </ListTools>
        </>
      )}
      <FoundStatus found={settled && narrowed ? items.length : null} />
      {items.length > 0 && (
        <ul className="entry-lines" aria-label={label}>
          {items.map(line)}
        </ul>
      )}
      {settled && narrowed && items.length === 0 && <p className="list-foot">{noneFound}</p>}
      {pages.hasNextPage && (
        <p className="list-foot">
          <ShowMore pages={pages}>{older}</ShowMore>
        </p>
      )}
    </ListPage>
  );
}
