/** A phone or tablet that was let in. */
export interface DeviceTable {
  readonly id: string;
  readonly name: string;
  /** What its token becomes under the data folder's own key; the token itself is kept nowhere here. */
  readonly token_seal: string;
  readonly let_in_at: string;
  readonly last_seen_at: string;
  readonly shut_out_at: string | null;
}
