import { daysUntilLapsed } from '../../application/devices/deviceStanding.ts';

/** Over https the name itself binds the cookie to this host, to its root and to https (RFC 6265bis, `__Host-`). */
const cookieName = (secure: boolean) => (secure ? '__Host-stonetone' : 'stonetone');

/** Kept by the browser for longer than a device may stay unseen, so that the server alone decides, s. */
const keptSeconds = (daysUntilLapsed + 370) * 86_400;

const always = 'Path=/; HttpOnly; SameSite=Strict';

/** The header that gives a device its token: no script can read it, no other site's page sends it. */
export function tokenCookie(token: string, secure: boolean): string {
  return `${cookieName(secure)}=${token}; Max-Age=${keptSeconds}; ${always}${secure ? '; Secure' : ''}`;
}

/** The header that takes it away again. */
export function goneCookie(secure: boolean): string {
  return `${cookieName(secure)}=; Max-Age=0; ${always}${secure ? '; Secure' : ''}`;
}

/** The token that a request carries; null without one. Over https one that was given over http is not looked at. */
export function tokenOf(header: string | undefined, secure: boolean): string | null {
  const start = `${cookieName(secure)}=`;
  const found = header
    ?.split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(start));
  const token = found?.slice(start.length) ?? '';
  return /^[\w-]{43}$/.test(token) ? token : null;
}
