import './Notice.css';
import type { ReactNode } from 'react';
import { told, toldOr } from '../words/told.ts';

/**
 * A few plain words about something wrong or worth knowing: what it is, and what to do.
 * `trouble` stops the work and is read out at once; `danger` is to be minded before hands move; `caution` is a warning
 * about a result; `aside` only tells.
 */
export function Notice({
  kind,
  title,
  children,
}: {
  kind: 'trouble' | 'danger' | 'caution' | 'aside';
  title: string;
  children?: ReactNode;
}) {
  return (
    <div
      className={`notice ${kind} ${kind === 'trouble' || kind === 'danger' ? 'hatched-head' : 'minded'}`}
      role={kind === 'trouble' ? 'alert' : undefined}
    >
      <p>
        <b>{told(title)}</b> {toldOr(children)}
      </p>
    </div>
  );
}
