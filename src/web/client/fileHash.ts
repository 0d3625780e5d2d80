import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** How much of a file is read at once, bytes. */
const stepBytes = 1e6;

/**
 * The SHA-256 of a file, hexadecimal (FIPS 180-4). Browsers hash by themselves on secure addresses only, and a phone
 * over plain http is not on one.
 */
export async function fileHash(file: Blob): Promise<string> {
  const hash = sha256.create();
  for (let from = 0; from < file.size; from += stepBytes) {
    hash.update(new Uint8Array(await file.slice(from, from + stepBytes).arrayBuffer()));
  }
  return bytesToHex(hash.digest());
}
