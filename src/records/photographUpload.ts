/** A photograph that is to be sent in pieces, as its sender tells of it before the first. */
export interface UploadStart {
  /** As the sender's machine calls it; never a path. */
  readonly fileName: string;
  /** Of the whole file, bytes. */
  readonly byteCount: number;
  /** Of the whole file as it is sent, SHA-256 in hexadecimal. */
  readonly sha256: string;
}

/** How far a photograph has come that is sent in pieces. */
export interface PhotographUpload extends UploadStart {
  readonly id: string;
  /** How many of its bytes, from the first on, are on the disk here. */
  readonly receivedBytes: number;
  /** The photograph that it has become; null until it is whole and read. */
  readonly photograph: string | null;
  /** ISO 8601 with zone. */
  readonly startedAt: string;
  /** When what is there of it is let go, ISO 8601 with zone. */
  readonly endsAt: string;
}
