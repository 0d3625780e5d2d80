import type { Failure } from '../foundation/failure.ts';

/** Why a save was refused; `current` is what is kept now, where somebody saved in between. */
export interface SaveRefusal<Kept> {
  readonly failure: Failure;
  readonly current: Kept | null;
}
