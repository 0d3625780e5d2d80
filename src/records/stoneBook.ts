import type { KeptAt } from './keptAt.ts';

/** One thing that happened, as a record tells it. */
export interface BookEntry {
  /** ISO 8601; a day alone where no hour is known, null where not even that. */
  readonly at: string | null;
  readonly what: string;
  /** Empty where nothing more is kept. */
  readonly more: string;
  readonly from: KeptAt;
}

/** A chapter: the stone itself, or one work on it. */
export interface BookChapter {
  readonly name: string;
  /** In the order of time; those without a time come first. */
  readonly entries: readonly BookEntry[];
  readonly notRecorded: readonly string[];
}

/** The life of a stone or a work, from records alone. */
export interface StoneBook {
  readonly title: string;
  readonly facts: readonly (readonly [label: string, value: string | null])[];
  readonly chapters: readonly BookChapter[];
  readonly madeAt: string;
}
