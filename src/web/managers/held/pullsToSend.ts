import type { PullDraft } from '../../../records/pull.ts';
import { draftOfTyped } from '../proofs/pullDraft.ts';
import { heldIdOf } from './heldName.ts';
import type { HeldPhotograph } from './heldPhotograph.ts';
import type { HeldPull } from './heldPull.ts';
import type { HeldPullShelf } from './heldPullShelf.ts';

/** Why a pull is not taken. */
export interface PullRefusal {
  readonly code: string;
  readonly message: string;
  readonly remedy: string;
  /** Whether no other pull would be taken now either. */
  readonly forAll: boolean;
}

export interface PullsToSendParts {
  readonly shelf: HeldPullShelf;
  /** The photographs that this browser holds; rejects where that cannot be known. */
  readonly photographs: () => Promise<readonly HeldPhotograph[]>;
  /** Has a photograph sent anew that the server no longer has. */
  readonly sendAgain: (photograph: string) => Promise<void>;
  /** Keeps a pull under its id, once however often it is asked, and brings it into what the page holds. */
  readonly send: (pull: HeldPull, draft: PullDraft) => Promise<void>;
  /** What the server said where it answered and said no; null where it did not answer. */
  readonly refusalOf: (thrown: unknown) => PullRefusal | null;
  /** Hears which photographs went with a pull. */
  readonly onGone: (photographs: readonly string[]) => void;
  /** Hears of pulls that another page of this browser sent or let go of. */
  readonly onGoneElsewhere: (pulls: readonly HeldPull[]) => void;
}

export interface ShownPull {
  readonly pull: HeldPull;
  readonly sending: boolean;
  /** Why Stonetone does not take it; null where nothing is known against it. */
  readonly refusal: PullRefusal | null;
}

export interface PullsToSendView {
  /** In the order in which they were entered; null until the browser has looked. */
  readonly waiting: readonly ShownPull[] | null;
  /** Whether the server could not be reached at the last attempt. */
  readonly unreachable: boolean;
}

/**
 * Holds pulls that were entered to their end until the server has them, across reloads. They are sent in order, each after
 * its photographs. One that is refused for what it is steps aside until a person changes it or lets go of it.
 */
export class PullsToSend {
  readonly #parts: PullsToSendParts;
  readonly #listeners = new Set<() => void>();
  #view: PullsToSendView = { waiting: null, unreachable: false };
  #busy = false;
  /** How often this page itself changed what lies there: what was read meanwhile is of before. */
  #changes = 0;

  constructor(parts: PullsToSendParts) {
    this.#parts = parts;
  }

  readonly current = (): PullsToSendView => this.#view;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Holds a pull, or puts it in place of itself as it was; false where this browser cannot keep it. */
  async hold(pull: HeldPull): Promise<boolean> {
    try {
      await this.#parts.shelf.put(pull);
    } catch {
      return false;
    }
    this.#changes++;
    const { id } = pull.typed;
    const fresh: ShownPull = { pull, sending: false, refusal: null };
    const waiting = this.#view.waiting ?? [];
    const known = waiting.some((shown) => shown.pull.typed.id === id);
    this.#show({
      waiting: known
        ? waiting.map((shown) => (shown.pull.typed.id === id ? fresh : shown))
        : [...waiting, fresh],
    });
    return true;
  }

  /** Lets go of a pull for good, and of the photographs that were held for it unless they are needed further. */
  async drop(id: string, { withPhotographs }: { readonly withPhotographs: boolean }): Promise<void> {
    const held = withPhotographs ? await this.#photographsOf(id) : [];
    await this.#parts.shelf.drop(id, held);
    this.#changes++;
    this.#show({ waiting: (this.#view.waiting ?? []).filter(({ pull }) => pull.typed.id !== id) });
    this.#parts.onGone(held);
  }

  /** Reads what lies there, as another page of this browser may have left it. */
  async takeUp(): Promise<void> {
    let lying: readonly HeldPull[];
    let changes: number;
    try {
      do {
        changes = this.#changes;
        lying = await this.#parts.shelf.read();
      } while (changes !== this.#changes);
    } catch {
      if (this.#view.waiting === null) this.#show({ waiting: [] });
      return;
    }
    const before = this.#view.waiting;
    if (before !== null && before.length + lying.length === 0) return;
    const there = new Set(lying.map(({ typed }) => typed.id));
    const gone = (before ?? []).filter(({ pull }) => !there.has(pull.typed.id));
    if (gone.length > 0) this.#parts.onGoneElsewhere(gone.map(({ pull }) => pull));
    const here = new Map((before ?? []).map((shown) => [shown.pull.typed.id, shown]));
    this.#show({
      waiting: lying.map((pull): ShownPull => {
        const known = here.get(pull.typed.id);
        const same = known && JSON.stringify(known.pull.typed) === JSON.stringify(pull.typed);
        return same ? known : { pull, sending: false, refusal: null };
      }),
    });
  }

  /** Sends those whose photographs are sent, first come first; stops where nothing gets through. */
  async drain(): Promise<void> {
    if (this.#busy) return;
    this.#busy = true;
    try {
      await this.takeUp();
      const waiting = this.#view.waiting ?? [];
      if (waiting.length === 0) return this.#reached();
      const photographs = new Map((await this.#parts.photographs()).map((one) => [one.id, one]));
      for (const { pull, refusal } of waiting) {
        if (refusal && !refusal.forAll) continue;
        const draft = sentDraft(pull, photographs);
        if (draft !== null && !(await this.#bring(pull, draft))) return;
      }
    } catch {
      // what is held cannot be read now: it is tried again
    } finally {
      this.#busy = false;
    }
  }

  /** False where none of those behind it would get through either. */
  async #bring(pull: HeldPull, draft: PullDraft): Promise<boolean> {
    const { id } = pull.typed;
    this.#change(id, { sending: true });
    try {
      await this.#parts.send(pull, draft);
    } catch (thrown) {
      const refusal = this.#parts.refusalOf(thrown);
      const held = pull.typed.photographs.flatMap(({ photograph }) => heldIdOf(photograph) ?? []);
      // a server that was set back no longer has the photograph; it lies here still
      const mended = refusal?.code === 'photograph-unknown' && held.length > 0;
      if (mended) for (const photograph of held) await this.#parts.sendAgain(photograph);
      this.#change(id, { sending: false, refusal: mended ? null : refusal });
      this.#show({ unreachable: refusal === null });
      return refusal !== null && !refusal.forAll;
    }
    await this.drop(id, { withPhotographs: true });
    this.#reached();
    return true;
  }

  async #photographsOf(pull: string): Promise<readonly string[]> {
    const all = await this.#parts.photographs();
    return all.flatMap(({ id, belongs }) =>
      belongs.to === 'pull-draft' && belongs.pull === pull ? [id] : [],
    );
  }

  #reached(): void {
    if (this.#view.unreachable) this.#show({ unreachable: false });
  }

  #change(id: string, change: Partial<ShownPull>): void {
    this.#show({
      waiting: (this.#view.waiting ?? []).map((shown) =>
        shown.pull.typed.id === id ? { ...shown, ...change } : shown,
      ),
    });
  }

  #show(change: Partial<PullsToSendView>): void {
    this.#view = { ...this.#view, ...change };
    for (const listener of this.#listeners) listener();
  }
}

/**
 * The pull as it can be sent: its photographs under the ids that the server gave them. One that a person threw away is
 * left out, as is one that turned out to be another once more.
 * @returns null while one of its photographs is not sent
 */
function sentDraft(
  { typed, enteredAt }: HeldPull,
  photographs: ReadonlyMap<string, HeldPhotograph>,
): PullDraft | null {
  const named = typed.photographs.flatMap((taken) => {
    const held = heldIdOf(taken.photograph);
    if (held === null) return [taken];
    const lying = photographs.get(held);
    return lying ? [{ ...taken, photograph: lying.kept }] : [];
  });
  const sent = named.flatMap(({ photograph, ...taken }) =>
    photograph === null ? [] : [{ ...taken, photograph }],
  );
  if (sent.length < named.length) return null;
  const once = sent.filter(
    ({ photograph }, at) => sent.findIndex((other) => other.photograph === photograph) === at,
  );
  return draftOfTyped({ ...typed, photographs: once }, enteredAt);
}
