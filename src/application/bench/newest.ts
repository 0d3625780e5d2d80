/** Values by their ids, of which those that were set last are held. */
export interface Newest<Value> {
  get(id: string): Value | undefined;
  has(id: string): boolean;
  /** Holds a value as the newest; the oldest go until what is left weighs no more than `most`. It stays itself. */
  set(id: string, value: Value): void;
  delete(id: string): void;
}

/** @param weigh what a value weighs, the same at every asking */
export function createNewest<Value>(most: number, weigh: (value: Value) => number): Newest<Value> {
  const held = new Map<string, Value>();
  let weight = 0;
  function remove(id: string): void {
    const value = held.get(id);
    if (value === undefined) return;
    held.delete(id);
    weight -= weigh(value);
  }
  return {
    get: (id) => held.get(id),
    has: (id) => held.has(id),
    set(id, value) {
      remove(id);
      held.set(id, value);
      weight += weigh(value);
      for (const oldest of held.keys()) {
        if (weight <= most || oldest === id) break;
        remove(oldest);
      }
    },
    delete: remove,
  };
}
