import './ListTools.css';
import { type ReactNode, useId } from 'react';

/** What stands above a list: the search, and what else narrows it. */
export function ListTools({
  label,
  typed,
  onType,
  children,
}: {
  label: string;
  typed: string;
  onType: (typed: string) => void;
  children?: ReactNode;
}) {
  const id = useId();
  return (
    <search className="list-tools">
      <div>
        <label htmlFor={id}>{label}</label>
        <input id={id} type="search" value={typed} onChange={(event) => onType(event.target.value)} />
      </div>
      {children}
    </search>
  );
}
