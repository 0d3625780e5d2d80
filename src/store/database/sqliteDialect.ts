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

/** How queries reach an open SQLite handle. */
export function sqliteDialect(handle: Handle): Dialect {
  const usual = new SqliteDialect({ database: handle });
  return {
    createDriver: () => new OnceRolledBack(handle),
    createAdapter: () => usual.createAdapter(),
    createQueryCompiler: () => usual.createQueryCompiler(),
    createIntrospector: (database) => usual.createIntrospector(database),
  };
}
