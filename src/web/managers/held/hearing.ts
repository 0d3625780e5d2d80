/** Which of the answers that this page shows are old, since the server did not answer when they were asked for. */
class Hearing {
  readonly #listeners = new Set<() => void>();
  readonly #old = new Map<string, number>();
  #oldest: number | null = null;

  /** When the oldest of them was heard, ms since 1970; null where all were heard by this page. */
  readonly current = (): number | null => this.#oldest;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** An answer was heard now (null), or taken from what was heard at `since`. */
  heard(key: string, since: number | null): void {
    if (since === null) this.#old.delete(key);
    else this.#old.set(key, since);
    const oldest = this.#old.size === 0 ? null : Math.min(...this.#old.values());
    if (oldest === this.#oldest) return;
    this.#oldest = oldest;
    for (const listener of this.#listeners) listener();
  }

  /** The server answers again: what this page shows is asked for anew. */
  forget(): void {
    for (const key of [...this.#old.keys()]) this.heard(key, null);
  }
}

/** Of this page. */
export const hearing = new Hearing();
