import { useEffect, useState } from 'react';
import type { ShownFailure } from '../client/shownFailure.ts';
import { mergeTyped, type Typed } from '../managers/typedMerge.ts';
import { typedFromShelf, typedToShelf } from '../managers/typedShelf.ts';
import { useSaving } from './useSaving.ts';

/** What somebody else saved while a form was open, beside what was typed. */
export interface StaleShown {
  readonly clashes: readonly { readonly field: string; readonly kept: string }[];
  readonly taken: readonly { readonly field: string; readonly kept: string }[];
}

/** A form over one record: what is typed, what is wrong with it, and what somebody else saved meanwhile. */
export interface TypedForm<Entry, Values extends Typed> {
  readonly values: Values;
  readonly set: (changes: Partial<Values>) => void;
  /** What is wrong with a field; told once a save was tried. */
  readonly troubleOf: (field: keyof Values & string) => string | null;
  readonly pending: boolean;
  readonly trouble: ShownFailure | null;
  readonly stale: StaleShown | null;
  /** Drops what was typed for what is kept now. */
  readonly takeKept: () => void;
  /** Saves; answers the record, or null where something is wrong. */
  readonly save: () => Promise<Entry | null>;
}

/**
 * Holds a form whose fields are all text. Where somebody saved in between, everything typed stays, fields that were
 * not touched take on what is kept, and the next save starts from there.
 */
export function useTypedForm<Entry, Values extends Typed>({
  entry,
  typedOf,
  check,
  send,
  shelf,
}: {
  /** What the form opens on; null for something new. */
  entry: Entry | null;
  typedOf: (entry: Entry | null) => Values;
  /** What is wrong, by field; null where nothing is. */
  check: (values: Values) => Readonly<Partial<Record<keyof Values, string | null>>>;
  send: (values: Values, entry: Entry | null) => Promise<Entry>;
  /** For something new: the name under which what is typed outlives a reload, until it is saved. */
  shelf?: string;
}): TypedForm<Entry, Values> {
  const [base, setBase] = useState(() => ({ entry, typed: typedOf(entry) }));
  const [values, setValues] = useState(() =>
    shelf === undefined ? base.typed : typedFromShelf(window.sessionStorage, shelf, base.typed),
  );
  const [stale, setStale] = useState<StaleShown | null>(null);
  const [tried, setTried] = useState(false);
  const saving = useSaving<Entry>();
  const troubles = check(values);
  // Another form of the same page may have saved: go on from there, unless both changed the same field.
  useEffect(() => {
    if (entry === null || stale !== null || versionOf(entry) <= versionOf(base.entry)) return;
    const kept = typedOf(entry);
    const { values: merged, clashes } = mergeTyped(base.typed, values, kept);
    if (clashes.length > 0) return;
    setBase({ entry, typed: kept });
    setValues(merged as Values);
  }, [entry, base, values, stale, typedOf]);
  return {
    values,
    set: (changes) =>
      setValues((now) => {
        const next = { ...now, ...changes };
        if (shelf !== undefined) typedToShelf(window.sessionStorage, shelf, next);
        return next;
      }),
    troubleOf: (field) => (tried ? (troubles[field] ?? null) : null),
    pending: saving.pending,
    trouble: saving.trouble,
    stale,
    takeKept() {
      setValues(base.typed);
      setStale(null);
      saving.forget();
    },
    async save() {
      setTried(true);
      if (Object.values(troubles).some((each) => each !== null && each !== undefined)) return null;
      const saved = await saving.send(
        () => send(values, base.entry),
        (current) => {
          const kept = typedOf(current);
          const { values: merged, clashes, taken } = mergeTyped(base.typed, values, kept);
          const shown = (field: string) => ({ field, kept: kept[field] ?? '' });
          setStale({ clashes: clashes.map(shown), taken: taken.map(shown) });
          setValues(merged as Values);
          setBase({ entry: current, typed: kept });
        },
      );
      if (saved !== null) {
        setStale(null);
        if (shelf !== undefined) typedToShelf(window.sessionStorage, shelf, null);
      }
      return saved;
    },
  };
}

/** The version of a record that has one; 0 for what has none. */
function versionOf(entry: unknown): number {
  return typeof entry === 'object' && entry !== null && 'version' in entry ? Number(entry.version) : 0;
}
