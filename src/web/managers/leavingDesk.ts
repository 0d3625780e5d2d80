import type { LeavingList, LeavingStep } from '../../records/rack.ts';
import type { LogToSend, UnsentEvent } from './bench/logToSend.ts';
import type { DraftShelf } from './draftKeeper.ts';
import { dropQuietTicks, keepQuietTicks, quietTicks } from './quietTicks.ts';
import { stepKey } from './stepKey.ts';

type ToSend = Pick<LogToSend, 'add' | 'current' | 'listen' | 'drain'>;
type Sending = ReturnType<LogToSend['current']>;

export interface LeavingParts {
  readonly toSendOf: (runId: string) => ToSend;
  /** Begins a run of a work that has none; asked again under the same client id, it is the same run. */
  readonly begin: (workId: string, clientId: string) => Promise<string>;
  readonly newClientId: () => string;
  readonly device: string;
  readonly now: () => Date;
  /** Where ticks that no log holds outlive a reload. */
  readonly shelf: DraftShelf;
}

export interface LeavingView {
  /** Keys of the steps that are done. */
  readonly ticked: ReadonlySet<string>;
  /** All that is not sent yet, of all runs. */
  readonly sending: Sending;
  /** Somebody said that they leave. */
  readonly left: boolean;
  /** What beginning a run threw; null where nothing. */
  readonly trouble: unknown;
}

/**
 * Ticks off what is done before leaving: what a step does to a stone is logged at the tick and taken back with it;
 * at last every run hears what was ticked.
 */
export class LeavingDesk {
  readonly #list: LeavingList;
  readonly #parts: LeavingParts;
  readonly #allToSend = new Map<string, ToSend>();
  readonly #runs = new Map<string, Promise<string>>();
  /** Client ids of what ticks logged, by step. */
  readonly #logged = new Map<string, string>();
  readonly #listeners = new Set<() => void>();
  #view: LeavingView = {
    ticked: new Set(),
    sending: { unsent: [], state: 'well', kept: 'yes', read: true },
    left: false,
    trouble: null,
  };

  constructor(list: LeavingList, parts: LeavingParts) {
    this.#list = list;
    this.#parts = parts;
    this.#view = { ...this.#view, ticked: quietTicks(list, parts.shelf, parts.now()) };
    for (const { workId, runId } of list.stones) if (runId !== null) this.#open(workId, runId);
  }

  readonly current = (): LeavingView => this.#view;

  /** Calls `listener` after every change; returns the function that stops that. */
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Ticks a step, or takes the tick back. */
  async toggle(workId: string | null, index: number): Promise<void> {
    const key = stepKey(workId, index);
    const ticked = new Set(this.#view.ticked);
    const on = !ticked.delete(key);
    if (on) ticked.add(key);
    this.#show({ ticked, trouble: null });
    const logs = workId === null ? null : (this.#stepOf(workId, index)?.logs ?? null);
    if (workId === null || logs === null) return keepQuietTicks(this.#list, this.#parts, ticked);
    if (on) await this.#log(workId, key, logs);
    else await this.#takeBack(workId, key);
  }

  /** Tells every run what was ticked. */
  async leave(): Promise<void> {
    this.#show({ trouble: null });
    const room = this.#done(
      null,
      this.#list.room.map((words) => ({ words })),
    );
    for (const { workId, steps } of this.#list.stones) {
      const done = this.#done(workId, steps);
      // no run is begun to say that nothing was done
      if (!this.#runs.has(workId) && done.length === 0) continue;
      await this.#add(workId, { kind: 'left', payload: { done: [...done, ...room] } });
    }
    const left = this.#view.trouble === null;
    if (left) dropQuietTicks(this.#parts.shelf);
    this.#show({ left });
  }

  /** Sends what waits. */
  drain(): void {
    for (const toSend of this.#allToSend.values()) void toSend.drain();
  }

  #stepOf(workId: string, index: number): LeavingStep | undefined {
    return this.#list.stones.find((stone) => stone.workId === workId)?.steps[index];
  }

  #done(workId: string | null, steps: readonly { readonly words: string }[]): string[] {
    return steps
      .filter((_, index) => this.#view.ticked.has(stepKey(workId, index)))
      .map(({ words }) => words);
  }

  async #log(workId: string, key: string, logs: Pick<UnsentEvent, 'kind' | 'payload'>): Promise<void> {
    const clientId = this.#parts.newClientId();
    this.#logged.set(key, clientId);
    if (await this.#add(workId, logs, clientId)) return;
    this.#logged.delete(key);
    const ticked = new Set(this.#view.ticked);
    ticked.delete(key);
    this.#show({ ticked });
  }

  async #takeBack(workId: string, key: string): Promise<void> {
    const clientId = this.#logged.get(key);
    if (clientId === undefined) return;
    this.#logged.delete(key);
    await this.#add(workId, { kind: 'undo', payload: { clientId } });
  }

  async #add(
    workId: string,
    said: Pick<UnsentEvent, 'kind' | 'payload'>,
    clientId = this.#parts.newClientId(),
  ): Promise<boolean> {
    const { device, now } = this.#parts;
    const event = { clientId, ...said, at: now().toISOString(), actor: null, device };
    try {
      const toSend = this.#allToSend.get(await this.#runOf(workId))!;
      toSend.add(event);
      return true;
    } catch (trouble) {
      this.#show({ trouble });
      return false;
    }
  }

  #runOf(workId: string): Promise<string> {
    const known = this.#runs.get(workId);
    if (known) return known;
    const begun = this.#parts.begin(workId, this.#parts.newClientId()).then((runId) => {
      this.#open(workId, runId);
      return runId;
    });
    this.#runs.set(workId, begun);
    begun.catch(() => this.#runs.delete(workId));
    return begun;
  }

  #open(workId: string, runId: string): void {
    const toSend = this.#parts.toSendOf(runId);
    this.#runs.set(workId, Promise.resolve(runId));
    this.#allToSend.set(runId, toSend);
    toSend.listen(() => this.#show({}));
    this.#show({});
  }

  #show(change: Partial<Omit<LeavingView, 'sending'>>): void {
    this.#view = { ...this.#view, ...change, sending: this.#sending() };
    for (const listener of this.#listeners) listener();
  }

  #sending(): Sending {
    const all = [...this.#allToSend.values()].map((toSend) => toSend.current());
    const states = all.map(({ state }) => state);
    const kept = all.map((toSend) => toSend.kept);
    return {
      unsent: all.flatMap(({ unsent }) => unsent),
      state: states.includes('refused') ? 'refused' : states.includes('unreachable') ? 'unreachable' : 'well',
      kept: kept.includes('no') ? 'no' : kept.includes('not yet') ? 'not yet' : 'yes',
      read: all.every(({ read }) => read),
    };
  }
}
