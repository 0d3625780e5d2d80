import type { RunEvent, RunEventInput } from '../../../records/run.ts';
import type { TapShelf } from '../held/tapShelf.ts';

/** What waits to be sent: all that is needed but the moment of sending. */
export type UnsentEvent = Omit<RunEventInput, 'sentAt'>;

/** How the last attempt to send went; whatever failed is tried again at the next `drain`. */
type SendingState = 'well' | 'unreachable' | 'refused';

/** The least that must be known of what is held. */
interface Sendable {
  readonly clientId: string;
}

export interface ToSendParts<Unsent extends Sendable = UnsentEvent, Kept = RunEvent> {
  readonly shelf: TapShelf<Unsent>;
  /** Resolves with the event once it is kept. */
  readonly send: (event: Unsent & { readonly sentAt: string }) => Promise<Kept>;
  /** True where the server answered and said no, so that waiting alone won't mend it. */
  readonly isRefusal: (thrown: unknown) => boolean;
  readonly now: () => Date;
  readonly onKept: (event: Kept) => void;
}

export interface ToSendView<Unsent extends Sendable = UnsentEvent> {
  /** In the order in which they happened. */
  readonly unsent: readonly Unsent[];
  readonly state: SendingState;
  /**
   * Whether all that is unsent would outlive the page: `not yet` while the browser still writes it down, `no` where its
   * storage is full or forbidden.
   */
  readonly kept: 'yes' | 'not yet' | 'no';
  /** False until it is known what an earlier page left here. */
  readonly read: boolean;
}

/**
 * Holds what was logged here until the server has it, in order, across reloads. One event is under way at a time; an
 * answer that got lost is asked for again under the same client id. Sending never waits for the browser's storage.
 */
export class LogToSend<Unsent extends Sendable = UnsentEvent, Kept = RunEvent> {
  readonly #parts: ToSendParts<Unsent, Kept>;
  readonly #listeners = new Set<() => void>();
  readonly #opened: Promise<void>;
  /** Ids that lie on the shelf, as far as this page knows. */
  readonly #shelved = new Set<string>();
  /** Ids that the server acknowledged to this page. */
  readonly #sent = new Set<string>();
  #shelving: Promise<void> = Promise.resolve();
  #view: ToSendView<Unsent> = { unsent: [], state: 'well', kept: 'yes', read: false };
  #busy = false;

  constructor(parts: ToSendParts<Unsent, Kept>) {
    this.#parts = parts;
    this.#opened = this.#takeUp().then(() => this.#show({ read: true }));
  }

  readonly current = (): ToSendView<Unsent> => this.#view;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Puts an event behind those that wait, has the browser write it down, and sends what can be sent. */
  add(event: Unsent): void {
    const kept = this.#view.kept === 'no' ? 'no' : 'not yet';
    this.#show({ unsent: [...this.#view.unsent, event], kept });
    this.#shelve();
    void this.drain();
  }

  /** Sends what waits, first come first; stops at the first that does not get through. */
  async drain(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    await this.#opened;
    if (this.#view.kept === 'no') this.#shelve();
    await this.#takeUp();
    for (let event = this.#view.unsent[0]; event !== undefined; event = this.#view.unsent[0]) {
      try {
        const kept = await this.#parts.send({ ...event, sentAt: this.#parts.now().toISOString() });
        this.#sent.add(event.clientId);
        this.#parts.onKept(kept);
      } catch (thrown) {
        this.#busy = false;
        this.#show({ state: this.#parts.isRefusal(thrown) ? 'refused' : 'unreachable' });
        return;
      }
      this.#letGo(event.clientId);
    }
    this.#busy = false;
    if (this.#view.state !== 'well') this.#show({ state: 'well' });
  }

  /** Writes down in order what is not yet: where one is refused, those behind it wait, so that order stays. */
  #shelve(): void {
    this.#shelving = this.#shelving.then(async () => {
      try {
        for (;;) {
          const next = this.#view.unsent.find(({ clientId }) => !this.#shelved.has(clientId));
          if (next === undefined) break;
          await this.#parts.shelf.add(next);
          this.#shelved.add(next.clientId);
          // sent in the meantime: it need not lie there
          if (this.#sent.has(next.clientId)) await this.#parts.shelf.drop(next.clientId);
        }
        this.#show({ kept: 'yes' });
      } catch {
        this.#show({ kept: 'no' });
      }
    });
  }

  #letGo(id: string): void {
    const unsent = this.#view.unsent.filter(({ clientId }) => clientId !== id);
    const stillUnkept = unsent.some(({ clientId }) => !this.#shelved.has(clientId));
    this.#show({ unsent, kept: stillUnkept ? this.#view.kept : 'yes' });
    // one that stays there is sent once more by a later page, and is the same one to the server
    this.#shelving = this.#shelving.then(() => this.#parts.shelf.drop(id)).catch(() => {});
  }

  /** A second page of this browser may have added to the shelf, or sent what lay there: what lies there counts. */
  async #takeUp(): Promise<void> {
    let lying: readonly Unsent[];
    // what is written down while the shelf is read is not missing from it
    const before = new Set(this.#shelved);
    try {
      lying = await this.#parts.shelf.read();
    } catch {
      return;
    }
    const there = new Set(lying.map(({ clientId }) => clientId));
    const fresh = lying.filter(({ clientId }) => !this.#shelved.has(clientId) && !this.#sent.has(clientId));
    const held = new Set(this.#view.unsent.map(({ clientId }) => clientId));
    const stay = this.#view.unsent.filter(({ clientId }) => !before.has(clientId) || there.has(clientId));
    const added = fresh.filter(({ clientId }) => !held.has(clientId));
    for (const { clientId } of fresh) this.#shelved.add(clientId);
    if (added.length === 0 && stay.length === this.#view.unsent.length) return;
    // what lies there was there before what this page has not written down yet
    const written = stay.filter(({ clientId }) => there.has(clientId));
    const unwritten = stay.filter(({ clientId }) => !there.has(clientId));
    this.#show({ unsent: [...written, ...added, ...unwritten] });
  }

  #show(change: Partial<ToSendView<Unsent>>): void {
    this.#view = { ...this.#view, ...change };
    for (const listener of this.#listeners) listener();
  }
}
