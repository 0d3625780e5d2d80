import type { HeldPhotograph } from './heldPhotograph.ts';
import type { PhotographShelf } from './photographShelf.ts';

export interface PhotographsToSendParts {
  readonly shelf: PhotographShelf;
  /** Resolves with the id of the kept photograph; the same one however often it is asked. */
  readonly send: (photograph: HeldPhotograph, onShare: (share: number) => void) => Promise<string>;
  /** Enters a kept photograph where it belongs, once however often it is asked; false: a screen takes it up later. */
  readonly enter: (photograph: HeldPhotograph, kept: string) => Promise<boolean>;
  /** What the server said where it answered and said no; null where it did not answer. */
  readonly refusalOf: (thrown: unknown) => PhotographRefusal | null;
}

/** Why a photograph is not taken. */
export interface PhotographRefusal {
  readonly message: string;
  readonly remedy: string;
  /** Whether no other photograph would be taken now either. */
  readonly forAll: boolean;
}

export interface ShownPhotograph {
  readonly photograph: HeldPhotograph;
  /** Share sent, 0..1; null while it is not on its way. */
  readonly share: number | null;
  /** Whether it would outlive the page; null while the browser still writes it down. */
  readonly kept: boolean | null;
  /** Why Stonetone does not take it; null where nothing is known against it. */
  readonly refusal: PhotographRefusal | null;
}

export interface PhotographsToSendView {
  /** In the order in which they were taken. */
  readonly waiting: readonly ShownPhotograph[];
  /** Whether the server could not be reached at the last attempt. */
  readonly unreachable: boolean;
}

/**
 * Holds photographs until the server has them and they are entered where they belong, in order, across reloads. One is
 * under way at a time. One that is refused for what it is steps aside, so that it does not hold up those behind it.
 */
export class PhotographsToSend {
  readonly #parts: PhotographsToSendParts;
  readonly #listeners = new Set<() => void>();
  readonly #done = new Set<string>();
  #view: PhotographsToSendView = { waiting: [], unreachable: false };
  #busy = false;

  constructor(parts: PhotographsToSendParts) {
    this.#parts = parts;
  }

  readonly current = (): PhotographsToSendView => this.#view;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Puts a photograph behind those that wait and has the browser write it down; it is sent from then on. */
  async add(photograph: HeldPhotograph): Promise<void> {
    this.#showWaiting([...this.#view.waiting, { photograph, share: null, kept: null, refusal: null }]);
    await this.#writeDown(photograph);
    void this.drain();
  }

  /** Lets go of one for good: it was taken up by a screen, or a person said so. */
  async drop(id: string): Promise<void> {
    this.#done.add(id);
    this.#showWaiting(this.#view.waiting.filter(({ photograph }) => photograph.id !== id));
    await this.#parts.shelf.drop(id).catch(() => {});
  }

  /** Has one sent that the server was given and no longer has. */
  async sendAgain(id: string): Promise<void> {
    const shown = this.#view.waiting.find(({ photograph }) => photograph.id === id);
    if (!shown) return;
    const photograph = { ...shown.photograph, kept: null };
    this.#change(id, { photograph });
    await this.#writeDown(photograph);
  }

  /** Forgets those that went with what they were taken for: they lie on the shelf no more. */
  forget(ids: readonly string[]): void {
    for (const id of ids) this.#done.add(id);
    this.#showWaiting(this.#view.waiting.filter(({ photograph: { id } }) => !ids.includes(id)));
  }

  /** Sends what waits, first come first, and enters each where it belongs; stops where nothing gets through. */
  async drain(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    try {
      for (const { photograph, kept } of this.#view.waiting) {
        if (kept === false) await this.#writeDown(photograph);
      }
      await this.#takeUp();
      for (const { photograph } of this.#view.waiting) {
        if (this.#done.has(photograph.id) || photograph.kept !== null) continue;
        if (!(await this.#bring(photograph))) return;
      }
      if (this.#view.unreachable) this.#show({ unreachable: false });
    } finally {
      this.#busy = false;
    }
  }

  async #writeDown(photograph: HeldPhotograph): Promise<void> {
    const { id } = photograph;
    const kept = await this.#parts.shelf.put(photograph).then(
      () => true,
      () => false,
    );
    // brought or thrown away in the meantime: it need not lie there
    if (this.#done.has(id)) await this.#parts.shelf.drop(id).catch(() => {});
    else this.#change(id, { kept });
  }

  /** False where none of those behind it would get through either. */
  async #bring(photograph: HeldPhotograph): Promise<boolean> {
    const { id } = photograph;
    try {
      const kept = await this.#parts.send(photograph, (share) => this.#change(id, { share }));
      if (await this.#parts.enter(photograph, kept)) await this.drop(id);
      else {
        const named = { ...photograph, kept };
        this.#change(id, { photograph: named, share: null, refusal: null });
        await this.#parts.shelf.put(named).catch(() => {});
      }
      return true;
    } catch (thrown) {
      const refusal = this.#parts.refusalOf(thrown);
      this.#change(id, { share: null, refusal });
      this.#show({ unreachable: refusal === null });
      return refusal !== null && !refusal.forAll;
    }
  }

  /** What lies on the shelf counts: another page of this browser may have added to it, or brought what lay there. */
  async #takeUp(): Promise<void> {
    let lying: readonly HeldPhotograph[];
    const before = new Set(
      this.#view.waiting.filter(({ kept }) => kept).map(({ photograph }) => photograph.id),
    );
    try {
      lying = await this.#parts.shelf.read();
    } catch {
      return;
    }
    const there = new Set(lying.map(({ id }) => id));
    const here = new Map(this.#view.waiting.map((shown) => [shown.photograph.id, shown]));
    const written = lying
      .filter(({ id }) => !this.#done.has(id))
      .map(
        (photograph): ShownPhotograph =>
          here.get(photograph.id) ?? { photograph, share: null, kept: true, refusal: null },
      );
    const unwritten = this.#view.waiting.filter(
      ({ photograph: { id } }) => !there.has(id) && !before.has(id),
    );
    if (written.length + unwritten.length === 0 && this.#view.waiting.length === 0) return;
    this.#showWaiting([...written, ...unwritten]);
  }

  #change(id: string, change: Partial<ShownPhotograph>): void {
    this.#showWaiting(
      this.#view.waiting.map((shown) => (shown.photograph.id === id ? { ...shown, ...change } : shown)),
    );
  }

  #showWaiting(waiting: readonly ShownPhotograph[]): void {
    this.#show({ waiting });
  }

  #show(change: Partial<PhotographsToSendView>): void {
    this.#view = { ...this.#view, ...change };
    for (const listener of this.#listeners) listener();
  }
}
