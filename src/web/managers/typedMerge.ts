/** The fields of a form as typed, by name. */
export type Typed = Readonly<Record<string, string>>;

/** What becomes of a form when somebody else saved in between. */
export interface TypedMerge {
  /** To go on with: what was typed here; where nothing was, what is kept now. */
  readonly values: Typed;
  /** Fields that both changed, each to something else. */
  readonly clashes: readonly string[];
  /** Fields that only the other changed. */
  readonly taken: readonly string[];
}

/** Brings together what a form opened with, what was typed in it, and what is kept now. Nothing typed is dropped. */
export function mergeTyped(opened: Typed, typed: Typed, kept: Typed): TypedMerge {
  const fields = Object.keys(typed);
  const mine = (field: string) => typed[field] !== opened[field];
  const theirs = (field: string) => kept[field] !== opened[field];
  const clashes = fields.filter((field) => mine(field) && theirs(field) && kept[field] !== typed[field]);
  const taken = fields.filter((field) => !mine(field) && theirs(field));
  const values = Object.fromEntries(
    fields.map((field) => [field, (mine(field) ? typed[field] : kept[field]) ?? '']),
  );
  return { values, clashes, taken };
}
