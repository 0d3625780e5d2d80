/** What a log belongs to: a run at the bench or an edition at the press. */
export type LogKind = 'run' | 'ledger';

/** One thing that was logged here and that the server may not have yet. */
export interface HeldTap {
  /** The run or edition. */
  readonly log: string;
  readonly of: LogKind;
  readonly clientId: string;
  readonly event: unknown;
}
