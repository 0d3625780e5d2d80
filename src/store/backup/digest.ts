import { createHash } from 'node:crypto';

/** Bytes that are counted and hashed on their way. */
export interface Digested {
  readonly content: AsyncIterable<Uint8Array>;
  /** Of what has passed so far; to be asked once, when all has. */
  digest(): { readonly bytes: number; readonly sha256: string };
}

/** Counts and hashes bytes (SHA-256, hexadecimal) while they pass. */
export function digested(content: AsyncIterable<Uint8Array>): Digested {
  const hash = createHash('sha256');
  let bytes = 0;
  async function* passing() {
    for await (const chunk of content) {
      hash.update(chunk);
      bytes += chunk.byteLength;
      yield chunk;
    }
  }
  return { content: passing(), digest: () => ({ bytes, sha256: hash.digest('hex') }) };
}
