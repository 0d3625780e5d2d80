import type { DraftShelf } from './draftKeeper.ts';
import type { Typed } from './typedMerge.ts';

const keyOf = (name: string) => `stonetone-typed-${name}`;

/** What was typed under that name before a reload, field by field over `empty`; `empty` where nothing lies there. */
export function typedFromShelf<Values extends Typed>(shelf: DraftShelf, name: string, empty: Values): Values {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(keyOf(name)) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return empty;
    const known = Object.entries(kept).filter(([field, text]) => field in empty && typeof text === 'string');
    return { ...empty, ...Object.fromEntries(known) };
  } catch {
    return empty;
  }
}

/** Lays what is typed on the shelf, or takes it off (null). A full or forbidden shelf costs only the reload. */
export function typedToShelf(shelf: DraftShelf, name: string, typed: Typed | null): void {
  try {
    if (typed === null) shelf.removeItem(keyOf(name));
    else shelf.setItem(keyOf(name), JSON.stringify(typed));
  } catch {
    // What is typed is still in the page.
  }
}
