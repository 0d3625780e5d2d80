import type { TestStone, TestStoneDraft } from '../../../records/testStone.ts';
import type { Saving } from '../useSaving.ts';

/** What every page of a test stone is given. */
export interface TestStonePageParts {
  readonly stone: TestStone;
  /** Saves changes to what is kept now; null where it was refused. */
  readonly save: (changes: Partial<TestStoneDraft>) => Promise<TestStone | null>;
  readonly saving: Saving<TestStone>;
  /** Holds a test stone as the server gave it. */
  readonly keep: (stone: TestStone) => void;
}
