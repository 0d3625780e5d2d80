import './EmptyPage.css';
import type { ReactNode } from 'react';

/** What an empty page says: what to do first; beside it a bare stone, where it is a stone or work on one that is missing. */
export function EmptyPage({
  title,
  stone = false,
  children,
  act,
}: {
  title: string;
  /** It is a stone, or work on one, that is missing. */
  stone?: boolean;
  children: ReactNode;
  act: ReactNode;
}) {
  return (
    <section className="empty-page">
      {stone && (
        <svg viewBox="0 0 300 240" aria-hidden="true">
          <path d="M14 44 38 26H276V196L252 214H14Z" fill="var(--stone-side)" />
          <path d="M14 44 38 26H276L252 44Z" fill="var(--stone-top)" />
          <path d="M14 44H252V214H14Z" fill="var(--stone)" />
          <path d="M0 214H300V224H0Z" fill="var(--ink)" />
        </svg>
      )}
      <div>
        <h2 className="big">{title}</h2>
        {children}
        {act}
      </div>
    </section>
  );
}
