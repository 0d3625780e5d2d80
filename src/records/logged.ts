/** One entry of a log, as it was logged; never changed. `Payloads` says by kind what each tells besides. */
export type Logged<Payloads, Kind extends keyof Payloads = keyof Payloads> = {
  readonly [K in Kind]: {
    /** 1 for a log's first, rising by one in the order in which the server kept them. */
    readonly sequence: number;
    /** Chosen by who logs it, so that sending it again makes no second one. */
    readonly clientId: string;
    readonly kind: K;
    /** When it happened by the device's own clock, ISO 8601 with zone. */
    readonly at: string;
    /** When it was sent by the same clock; null where the device did not say. */
    readonly sentAt: string | null;
    /** When it was kept, by the server's clock. */
    readonly receivedAt: string;
    readonly actor: string | null;
    /** Which clock `at` was read from; null is taken for one and the same. */
    readonly device: string | null;
    readonly payload: Payloads[K];
  };
}[Kind];

/** What a device sends of it: the server adds its time and the sequence number. */
export type LoggedInput<Payloads> = Omit<Logged<Payloads>, 'sequence' | 'receivedAt' | 'kind' | 'payload'> & {
  readonly kind: keyof Payloads;
  readonly payload: unknown;
};
