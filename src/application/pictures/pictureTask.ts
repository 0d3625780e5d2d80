import type { Result } from '../../foundation/result.ts';
import type { Corners } from '../../science/geometry/point.ts';
import type { TonesAnswer, TonesTask } from '../zoneTones/readTones.ts';
import type { IngestedPhotograph } from './ingestPhotograph.ts';

/** The rectangle that was found on a photograph, and how sure that is. */
export interface CornerSuggestion {
  /** Photograph px, clockwise as seen, from the mark with the F or else the top left; null where none was found. */
  readonly corners: Corners | null;
  /** Whether they begin at a mark with the F. */
  readonly letter: boolean;
  /** 0..1. */
  readonly sure: number;
  /** What was taken for the rectangle, such as `outline`; `none` where there was nothing. */
  readonly kind: string;
}

/** One heavy job on a single photograph, done in a thread of its own. */
export type PictureTask =
  | { readonly kind: 'ingest'; readonly folder: string; readonly fileName: string }
  | { readonly kind: 'pyramid'; readonly file: string; readonly fileName: string; readonly folder: string }
  | { readonly kind: 'corners'; readonly file: string; readonly fileName: string }
  | ({ readonly kind: 'tones' } & TonesTask);

/** What each kind of task answers. */
export interface PictureAnswers {
  readonly ingest: Result<IngestedPhotograph>;
  readonly pyramid: Result<null>;
  readonly corners: Result<CornerSuggestion>;
  readonly tones: Result<TonesAnswer>;
}
