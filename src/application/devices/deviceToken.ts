import { createHmac, randomBytes } from 'node:crypto';

/** What a device shows at every request: 256 random bits, base64url. */
export function newToken(): string {
  return randomBytes(32).toString('base64url');
}

/**
 * What of a token is kept: HMAC-SHA-256 under the data folder's own key, hexadecimal. That key is no part of a backup, so
 * that neither a copied database nor a restored one lets anybody in.
 */
export function sealToken(token: string, key: Uint8Array): string {
  return createHmac('sha256', key).update(token).digest('hex');
}
