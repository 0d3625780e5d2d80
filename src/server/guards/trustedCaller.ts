import { type Failure, failure } from '../../foundation/failure.ts';

/** What a request says about whom it is meant for and who sent it. */
export interface CallerHeaders {
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** The `Sec-Fetch-Site` header, which pages cannot forge. */
  readonly site: string | undefined;
  /** The `Sec-Fetch-Mode` header. */
  readonly mode: string | undefined;
  /** Whether it came over https. */
  readonly secure: boolean;
}

/** The names under which a server on this machine's loopback address answers. */
export function loopbackHosts(port: number): ReadonlySet<string> {
  return new Set([`127.0.0.1:${port}`, `localhost:${port}`, `[::1]:${port}`]);
}

/**
 * Null for a request from this program's own pages, or from a program that is no browser (which names no origin).
 * A foreign Host means that another site's name was pointed here (rebinding); a foreign Origin, or a browser that
 * says that another site asked, means that another site's page is using the person's browser. Following a link
 * from elsewhere is allowed: a navigation only shows a page.
 */
export function judgeCaller(caller: CallerHeaders, hosts: ReadonlySet<string>): Failure | null {
  const host = caller.host?.toLowerCase();
  if (host === undefined || !hosts.has(host))
    return failure('host-refused', { host: caller.host ?? 'nowhere' });
  if (caller.origin !== undefined && caller.origin !== `${caller.secure ? 'https' : 'http'}://${host}`) {
    return failure('origin-refused', { origin: caller.origin });
  }
  const foreign = caller.site === 'cross-site' || caller.site === 'same-site';
  if (foreign && caller.mode !== 'navigate') return failure('origin-refused', { origin: 'another site' });
  return null;
}
