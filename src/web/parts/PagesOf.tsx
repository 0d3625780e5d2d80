import './PagesOf.css';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { say } from '../words/say.ts';

/** One page of a thing. */
interface PageOf {
  readonly href: string;
  readonly words: ReactNode;
  readonly here: boolean;
  /** The work has come as far as this page tells of. */
  readonly standsHere?: boolean;
}

/**
 * The pages of a work, a test stone or an edition after its name, in the order in which it is worked, what belongs to
 * the thing last; the open one is said in bold.
 */
export function PagesOf({
  name,
  label,
  pages,
  children,
}: {
  name: string;
  label: string;
  pages: readonly PageOf[];
  /** What stands at the row's end. */
  children?: ReactNode;
}) {
  return (
    <nav className="pages-of" aria-label={label}>
      <ul>
        <li className="big">{name}</li>
        {pages.map(({ href, words, here, standsHere }) => (
          <li key={href}>
            <Link href={href} aria-current={here ? 'page' : undefined}>
              {words}
            </Link>
            {standsHere && <span className="soft">{say('stands here')}</span>}
          </li>
        ))}
      </ul>
      {children}
    </nav>
  );
}
