import type { FigureSource, KeptAt } from '../../records/keptAt.ts';

/** Notes where the figures of a paper are kept, while it is put together. */
export interface FigureSources {
  /** All that lies under `at` in the paper lies so under the field. */
  kept(at: string, record: KeptAt['record'], id: string, field: string): void;
  /** A figure that is worked out of others. */
  worked(at: string, how: NonNullable<FigureSource['how']>, from: readonly KeptAt[]): void;
  readonly all: readonly FigureSource[];
}

/** An empty list of sources, to be filled while a paper is put together. */
export function figureSources(): FigureSources {
  const all: FigureSource[] = [];
  return {
    all,
    kept: (at, record, id, field) => all.push({ at, from: [{ record, id, field }], how: null }),
    worked: (at, how, from) => all.push({ at, from, how }),
  };
}
