import type { ForeignProtocol, WorkProtocol } from '../../records/workProtocol.ts';
import { ask, withJson } from './ask.ts';
import { inPageWords } from './inPageWords.ts';
import { type ListQuery, pageAddress } from './pages.ts';

export const protocolsKey = ['protocols'] as const;
export const protocolKey = (id: string) => ['protocol', id] as const;
export const ownProtocolKey = (work: string) => ['own-protocol', work] as const;

/** One page of other studios' protocols, newest first. */
export interface ProtocolPage {
  readonly protocols: readonly ForeignProtocol[];
  readonly next: string | null;
}

export function listProtocols(
  query: ListQuery,
  after: string | null,
  signal?: AbortSignal,
): Promise<ProtocolPage> {
  return ask(pageAddress('/api/protocols', query, after), signal ? { signal } : {});
}

export function openProtocol(id: string): Promise<ForeignProtocol> {
  return ask(`/api/protocols/${id}`);
}

/** Keeps another studio's protocol; refused where it is none. */
export function bringProtocol(protocol: unknown): Promise<ForeignProtocol> {
  return ask('/api/protocols', withJson('POST', protocol));
}

/** Takes a protocol off the list, or brings it back. */
export function putProtocolBy(id: string, version: number, putBy: boolean): Promise<ForeignProtocol> {
  return ask(`/api/protocols/${id}/put-by`, withJson('PUT', { version, putBy }));
}

/** The protocol of one's own work as it stands now. */
export function readOwnProtocol(work: string): Promise<WorkProtocol> {
  return ask(`/api/works/${work}/protocol.json`);
}

export function protocolSheetAddress(id: string): string {
  return inPageWords(`/api/protocols/${id}/protocol.pdf`);
}
