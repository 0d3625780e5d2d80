import type { Kysely } from 'kysely';
import type { ForeignProtocol } from '../../records/workProtocol.ts';
import type { Tables } from '../database/tables.ts';
import { type EntryRows, entryRowsIn } from './entryRows.ts';

export type ForeignProtocolRepository = EntryRows<ForeignProtocol>;

/** The rows of other studios' protocols of an open database or of a transaction. */
export function foreignProtocolRepositoryIn(database: Kysely<Tables>): ForeignProtocolRepository {
  return entryRowsIn<ForeignProtocol>(database, 'foreign_protocols', ({ protocol, note }) => [
    protocol.title,
    protocol.stone.name,
    note,
    ...protocol.materials.map(({ name }) => name),
  ]);
}
