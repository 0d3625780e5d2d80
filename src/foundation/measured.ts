/** Where a number comes from. */
export type Basis = 'published' | 'common practice' | 'memory' | 'this room' | 'typed' | 'measured';

/** A value that never travels without its evidence. `low` and `high` bound a 95 % interval. */
export interface Measured<T = number> {
  readonly value: T;
  readonly low: T;
  readonly high: T;
  readonly basis: Basis;
  readonly warnings: readonly string[];
}
