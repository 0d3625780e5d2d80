import {
  type DatabaseConnection,
  type Dialect,
  type SqliteDatabase,
  SqliteDialect,
  SqliteDriver,
} from 'kysely';

/** An open handle that says whether a transaction is under way. */
type Handle = SqliteDatabase & { readonly inTransaction: boolean };

/** SQLite ends a transaction by itself where the disk is full; to roll back again would fail, and hide why. */
class OnceRolledBack extends SqliteDriver {
  readonly #handle: Handle;

  constructor(handle: Handle) {
    super({ database: handle });
    this.#handle = handle;
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#handle.inTransaction) await super.rollbackTransaction(connection);
  }
}

/** More statements than the program has; one whose text depends on what is asked does not stay. */
const statementsHeld = 500;

/** A handle that prepares the same text once. Rows are read whole, never one by one, so that no statement is in use twice. */
function preparingOnce(handle: Handle): Handle {
  const prepared = new Map<string, ReturnType<Handle['prepare']>>();
  return {
    close: () => handle.close(),
    get inTransaction() {
      return handle.inTransaction;
    },
    prepare(sql) {
      const held = prepared.get(sql);
      if (held) return held;
      const statement = handle.prepare(sql);
      if (prepared.size >= statementsHeld) prepared.clear();
      prepared.set(sql, statement);
      return statement;
    },
  };
}

/** How queries reach an open SQLite handle. */
export function sqliteDialect(handle: Handle): Dialect {
  const once = preparingOnce(handle);
  const usual = new SqliteDialect({ database: once });
  return {
    createDriver: () => new OnceRolledBack(once),
    createAdapter: () => usual.createAdapter(),
    createQueryCompiler: () => usual.createQueryCompiler(),
    createIntrospector: (database) => usual.createIntrospector(database),
  };
}
