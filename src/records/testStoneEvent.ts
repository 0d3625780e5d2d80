import type { Hold } from './patchReading.ts';

/** What happened around a test stone's reading; kept as it came, and never changed. */
export type TestStoneHappening =
  /** A reading put right by hand; `hold` null: not to be read. */
  | {
      readonly kind: 'corrected';
      readonly payload: {
        readonly print: string;
        readonly patch: string;
        readonly hold: Hold | null;
        readonly why: string;
      };
    }
  /** A blind reading was begun; its id is this event's client id. */
  | { readonly kind: 'sitting-begun'; readonly payload: { readonly print: string; readonly seed: number } }
  /** A patch was told in a blind reading; `hold` null: could not be told. */
  | {
      readonly kind: 'seen';
      readonly payload: { readonly sitting: string; readonly patch: string; readonly hold: Hold | null };
    }
  /** The list of who got what was opened; `untold` (the server counts): patches that had no verdict then. */
  | {
      readonly kind: 'list-opened';
      readonly payload: { readonly why: string; readonly untold?: number | undefined };
    };

/** As it is sent; sent again under one client id it is the same one. */
export type TestStoneEventInput = TestStoneHappening & {
  readonly clientId: string;
  /** Whose hand or eye it was. */
  readonly actor: string;
};

/** As it is kept. */
export type TestStoneEvent = TestStoneEventInput & {
  /** 1 for the first of a test stone. */
  readonly sequence: number;
  /** When it was kept, by the server's clock. */
  readonly at: string;
};
