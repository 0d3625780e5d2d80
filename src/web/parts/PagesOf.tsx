import './PagesOf.css';
import type { ReactNode } from 'react';
import { Link } from 'wouter';

/** One page of a thing. */
interface PageOf {
  readonly href: string;
  readonly words: ReactNode;
  readonly here: boolean;
}

/** The pages of a work, a test stone or an edition, in words after its name; the one that is open is said in bold. */
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
        {pages.map(({ href, words, here }) => (
          <li key={href}>
            <Link href={href} aria-current={here ? 'page' : undefined}>
              {words}
            </Link>
          </li>
        ))}
      </ul>
      {children}
    </nav>
  );
}
