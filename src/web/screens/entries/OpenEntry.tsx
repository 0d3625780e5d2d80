import './Entries.css';
import { type QueryKey, useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { shownFailure } from '../../client/shownFailure.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

/** Opens an entry of a list, or says why it can't be shown, with the way back. */
export function OpenEntry<Entry>({
  name,
  list,
  entryKey,
  open,
  children,
}: {
  /** Such as `batch`. */
  name: string;
  list: { readonly href: string; readonly stamp: string; readonly words: string };
  entryKey: QueryKey;
  open: () => Promise<Entry>;
  children: (entry: Entry) => ReactNode;
}) {
  const entry = useQuery({ queryKey: entryKey, queryFn: open });
  if (entry.data !== undefined) return children(entry.data);
  if (entry.isPending) return <p className="unseen">{say('Opening the {name} …', { name })}</p>;
  return (
    <>
      <PageHead stamp={list.stamp} headline={say('This {name} cannot be shown', { name })} />
      <div className="entry-body">
        <FailureNotice failure={shownFailure(entry.error)} />
        <ButtonLink href={list.href}>{list.words}</ButtonLink>
      </div>
    </>
  );
}
