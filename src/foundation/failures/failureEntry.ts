/** What a failure says; `{names}` are filled in from its details. */
export interface FailureEntry {
  readonly sentence: string;
  readonly remedy: string;
}
