import type { ReactNode } from 'react';
import { shownFailure } from '../client/shownFailure.ts';
import { ButtonLink } from './Button.tsx';
import { EmptyPage } from './EmptyPage.tsx';
import { FailureNotice } from './FailureNotice.tsx';
import { PageHead } from './PageHead.tsx';

/**
 * A page that lists what a room keeps: its head with the way to enter one more, what went wrong with reading it, and,
 * as long as there is nothing at all, what to do first. The list itself is in `children`.
 */
export function ListPage({
  stamp,
  headline,
  act,
  failed,
  empty,
  emptyTitle,
  emptyWords,
  stones = false,
  noteClass = 'list-foot',
  children,
}: {
  stamp: ReactNode;
  headline: string;
  /** The way to enter one more. */
  act: { readonly href: string; readonly words: string };
  /** What the reading of the list threw; null where nothing. */
  failed: Error | null;
  /** There is nothing to list yet, however one asks. */
  empty: boolean;
  emptyTitle: string;
  emptyWords: ReactNode;
  /** It lists stones, or work on them. */
  stones?: boolean;
  /** How a note on this page is set. */
  noteClass?: string;
  children: ReactNode;
}) {
  const enter = (
    <ButtonLink kind="act" href={act.href}>
      {act.words}
    </ButtonLink>
  );
  return (
    <>
      <PageHead stamp={stamp} headline={headline}>
        {!empty && enter}
      </PageHead>
      {failed && (
        <div className={noteClass}>
          <FailureNotice failure={shownFailure(failed)} />
        </div>
      )}
      {empty && (
        <EmptyPage title={emptyTitle} stone={stones} act={enter}>
          {emptyWords}
        </EmptyPage>
      )}
      {children}
    </>
  );
}
