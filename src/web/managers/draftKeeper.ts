import { type Draft, emptyDraft } from './draft.ts';

/** The part of the browser's storage that is used here. */
export interface DraftShelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

const shelfKey = 'stonetone-draft-1';

/** Holds the one draft and puts every change on the shelf, so that a reload or a closed lid loses nothing. */
export class DraftKeeper {
  readonly #shelf: DraftShelf;
  readonly #listeners = new Set<() => void>();
  #draft: Draft;

  constructor(shelf: DraftShelf) {
    this.#shelf = shelf;
    this.#draft = readDraft(shelf);
  }

  readonly current = (): Draft => this.#draft;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly change = (next: (draft: Draft) => Draft): void => {
    this.#draft = next(this.#draft);
    try {
      this.#shelf.setItem(shelfKey, JSON.stringify(this.#draft));
    } catch {
      // A full or forbidden shelf costs only the reload: the draft itself is still held here.
    }
    for (const listener of this.#listeners) listener();
  };

  readonly clear = (): void => {
    this.change(() => emptyDraft);
    this.#shelf.removeItem(shelfKey);
  };
}

/** What lies on the shelf, part by part over an empty draft; anything unreadable is an empty draft. */
function readDraft(shelf: DraftShelf): Draft {
  try {
    const kept: unknown = JSON.parse(shelf.getItem(shelfKey) ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...emptyDraft, ...kept } : emptyDraft;
  } catch {
    return emptyDraft;
  }
}
