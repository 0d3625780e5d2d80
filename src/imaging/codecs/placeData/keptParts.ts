/** The parts of a file that stay, in order. */
export interface KeptParts {
  /** Keeps the file's own bytes from `from` up to `to`; what goes on where the last part ended becomes one with it. */
  keep(from: number, to: number): void;
  /** Puts other bytes in. */
  put(bytes: Uint8Array): void;
  /** All of it, in memory of its own. */
  join(): Uint8Array;
}

/**
 * Gathers what stays of a file. Parts that touch are one, so that a file made of millions of tiny pieces takes no more
 * memory than its bytes.
 */
export function createKeptParts(file: Uint8Array): KeptParts {
  const parts: Uint8Array[] = [];
  let start = 0;
  let end = 0;

  function close(): void {
    if (end > start) parts.push(file.subarray(start, end));
    start = end;
  }

  return {
    keep(from, to) {
      if (from !== end) {
        close();
        start = from;
      }
      end = Math.min(to, file.length);
    },
    put(bytes) {
      close();
      parts.push(bytes);
    },
    join() {
      close();
      return new Uint8Array(Buffer.concat(parts));
    },
  };
}
