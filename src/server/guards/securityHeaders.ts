/**
 * Headers of every answer. Scripts only from this server and none inline; styles inline too, since dialogs set
 * them; pictures also from memory; nobody may frame, read or embed what this server shows.
 */
export const securityHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': [
    "default-src 'self'",
    "script-src 'self'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; '),
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  // The level and the hold-still check of the camera page are felt by accelerometer and gyroscope.
  'permissions-policy':
    'accelerometer=(self), camera=(self), geolocation=(), gyroscope=(self), microphone=()',
};

/** Beside them, where the address is one that browsers trust; elsewhere they complain of it and heed it not. */
export const trustedAddressHeaders: Readonly<Record<string, string>> = {
  'cross-origin-opener-policy': 'same-origin',
};

/** For a drawing or a document that came out of measuring: it may style itself, and load or run nothing. */
export const documentPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; frame-ancestors 'none'";
