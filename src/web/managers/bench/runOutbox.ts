import type { RunEvent, RunEventInput } from '../../../records/run.ts';
import type { DraftShelf } from '../draftKeeper.ts';
import { unsentKey } from './unsentRuns.ts';

/** What waits to be sent: all that is needed but the moment of sending. */
export type UnsentEvent = Omit<RunEventInput, 'sentAt'>;

/** How the last attempt to send went; whatever failed is tried again at the next `drain`. */
type SendingState = 'well' | 'unreachable' | 'refused';

/** The least that an outbox must know of what it holds. */
interface Sendable {
  readonly clientId: string;
}

export interface OutboxParts<Unsent extends Sendable = UnsentEvent, Kept = RunEvent> {
  readonly shelf: DraftShelf;
  /** Resolves with the event once it is kept. */
  readonly send: (event: Unsent & { readonly sentAt: string }) => Promise<Kept>;
  /** True where the server answered and said no, so that waiting alone won't mend it. */
  readonly isRefusal: (thrown: unknown) => boolean;
  readonly now: () => Date;
  readonly onKept: (event: Kept) => void;
}

export interface OutboxView<Unsent extends Sendable = UnsentEvent> {
  /** In the order in which they happened. */
  readonly unsent: readonly Unsent[];
  readonly state: SendingState;
  /** False where this browser's storage is full or forbidden: what is unsent then ends with the page. */
  readonly kept: boolean;
}

/**
 * Holds what was logged at the bench until the server has it, in order, across reloads. One event is under way at a
 * time; an answer that got lost is asked for again under the same client id.
 */
export class RunOutbox<Unsent extends Sendable = UnsentEvent, Kept = RunEvent> {
  readonly #parts: OutboxParts<Unsent, Kept>;
  readonly #key: string;
  readonly #listeners = new Set<() => void>();
  #view: OutboxView<Unsent>;
  #busy = false;

  constructor(runId: string, parts: OutboxParts<Unsent, Kept>) {
    this.#parts = parts;
    this.#key = unsentKey(runId);
    this.#view = { unsent: this.#shelved() ?? [], state: 'well', kept: true };
  }

  readonly current = (): OutboxView<Unsent> => this.#view;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Puts an event behind those that wait and sends what can be sent. */
  add(event: Unsent): void {
    this.#put((unsent) => [...unsent, event]);
    void this.drain();
  }

  /** Sends what waits, first come first; stops at the first that does not get through. */
  async drain(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    while (this.#view.unsent[0] !== undefined) {
      const event = this.#view.unsent[0];
      try {
        const kept = await this.#parts.send({ ...event, sentAt: this.#parts.now().toISOString() });
        this.#parts.onKept(kept);
      } catch (thrown) {
        this.#busy = false;
        this.#show({ ...this.#view, state: this.#parts.isRefusal(thrown) ? 'refused' : 'unreachable' });
        return;
      }
      this.#put((unsent) => unsent.filter(({ clientId }) => clientId !== event.clientId));
    }
    this.#busy = false;
    if (this.#view.state !== 'well') this.#show({ ...this.#view, state: 'well' });
  }

  /** A second page of this browser may have added to the shelf: what lies there counts. */
  #put(change: (unsent: readonly Unsent[]) => readonly Unsent[]): void {
    const unsent = change((this.#view.kept ? this.#shelved() : null) ?? this.#view.unsent);
    let kept = true;
    try {
      if (unsent.length === 0) this.#parts.shelf.removeItem(this.#key);
      else this.#parts.shelf.setItem(this.#key, JSON.stringify(unsent));
    } catch {
      kept = false;
    }
    this.#show({ ...this.#view, unsent, kept });
  }

  /** null where nothing can be read. */
  #shelved(): readonly Unsent[] | null {
    try {
      const kept: unknown = JSON.parse(this.#parts.shelf.getItem(this.#key) ?? '[]');
      return Array.isArray(kept) ? (kept as Unsent[]) : null;
    } catch {
      return null;
    }
  }

  #show(view: OutboxView<Unsent>): void {
    this.#view = view;
    for (const listener of this.#listeners) listener();
  }
}
