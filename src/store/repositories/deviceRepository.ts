import type { Kysely, Selectable } from 'kysely';
import type { Device } from '../../records/device.ts';
import type { DeviceTable } from '../database/deviceTables.ts';
import type { Tables } from '../database/tables.ts';

export interface DeviceRepository {
  add(device: Device, tokenSeal: string): Promise<void>;
  find(id: string): Promise<Device | null>;
  /** The device whose token has this seal, shut out or not. */
  sealed(tokenSeal: string): Promise<Device | null>;
  /** Whether any device, shut out or not, has this name, whatever its capitals. */
  named(name: string): Promise<Device | null>;
  /** Newest first. */
  list(): Promise<readonly Device[]>;
  rename(id: string, name: string): Promise<void>;
  seen(id: string, at: string): Promise<void>;
  shutOut(id: string, at: string): Promise<void>;
}

function fromRow(row: Selectable<DeviceTable>): Device {
  return {
    id: row.id,
    name: row.name,
    letInAt: row.let_in_at,
    lastSeenAt: row.last_seen_at,
    shutOutAt: row.shut_out_at,
  };
}

/** The devices' rows of an open database or of a transaction. */
export function deviceRepositoryIn(database: Kysely<Tables>): DeviceRepository {
  const one = async (column: 'id' | 'token_seal' | 'name', value: string): Promise<Device | null> => {
    const row = await database.selectFrom('devices').selectAll().where(column, '=', value).executeTakeFirst();
    return row ? fromRow(row) : null;
  };
  const change = async (id: string, columns: Partial<DeviceTable>): Promise<void> => {
    await database.updateTable('devices').set(columns).where('id', '=', id).execute();
  };
  return {
    async add({ id, name, letInAt, lastSeenAt, shutOutAt }, tokenSeal) {
      await database
        .insertInto('devices')
        .values({
          id,
          name,
          token_seal: tokenSeal,
          let_in_at: letInAt,
          last_seen_at: lastSeenAt,
          shut_out_at: shutOutAt,
        })
        .execute();
    },
    find: (id) => one('id', id),
    sealed: (tokenSeal) => one('token_seal', tokenSeal),
    named: (name) => one('name', name),
    async list() {
      const rows = await database
        .selectFrom('devices')
        .selectAll()
        .orderBy('let_in_at', 'desc')
        .orderBy('id')
        .execute();
      return rows.map(fromRow);
    },
    rename: (id, name) => change(id, { name }),
    seen: (id, at) => change(id, { last_seen_at: at }),
    shutOut: (id, at) => change(id, { shut_out_at: at }),
  };
}
