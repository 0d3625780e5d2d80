import type { PhotographState } from '../../../records/attachedPhotograph.ts';
import type { PhotographPlace, SideName } from '../draft.ts';

/** What a photograph was taken of, so that it is entered there once the server has it. */
export type PhotographBelongs =
  /** The stone of a work as it stood at the bench. */
  | { readonly to: 'work'; readonly workId: string; readonly state: PhotographState }
  | { readonly to: 'stone'; readonly stoneId: string; readonly state: PhotographState }
  /** A pull that is being entered or waits to be sent: it goes with that, by the id that it was given here. */
  | { readonly to: 'pull-draft'; readonly workId: string; readonly pull: string }
  /** A further reading of a pull: its screen takes it up. */
  | { readonly to: 'reading'; readonly workId: string; readonly pull: string }
  /** A comparison that is being set up: its screen takes it up. */
  | { readonly to: 'comparison'; readonly side: SideName; readonly place: PhotographPlace }
  /** A test stone, or a print of it; `over` is the photograph that lay there when it was taken. */
  | {
      readonly to: 'test-stone';
      readonly testStoneId: string;
      readonly as: 'stone' | 'print';
      readonly over: string | null;
      /** The held photograph of which this is the one set up again; null: it is the first. */
      readonly repeatOf: string | null;
    }
  /** A print at the press; `impression` is the client id of its entry in the ledger. */
  | {
      readonly to: 'impression';
      readonly editionId: string;
      readonly impression: string;
      readonly actor: string | null;
      readonly device: string;
      readonly ageMinutes: number | null;
    };

/** A photograph that was taken here and that the server may not have yet. */
export interface HeldPhotograph {
  /** Chosen by this device: what is entered for it is entered once under this id. */
  readonly id: string;
  readonly blob: Blob;
  readonly fileName: string;
  /** What a person would call what it shows, such as `print 3 of Twelve Tides`. */
  readonly shows: string;
  /** ISO 8601 with zone, by this device's clock. */
  readonly takenAt: string;
  readonly belongs: PhotographBelongs;
  /** Id of the photograph that the server keeps, where only a screen has to take it up; null until it is there. */
  readonly kept: string | null;
}
