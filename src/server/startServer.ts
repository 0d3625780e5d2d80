import type { Failure } from '../foundation/failure.ts';
import { failure } from '../foundation/failure.ts';
import { fail, type Result } from '../foundation/result.ts';

export interface ServerOptions {
  /** Folder that holds the database, the photographs and the results; made where it is missing. */
  readonly dataFolder: string;
  /** TCP port; 0 picks a free one. */
  readonly port: number;
  /** A loopback address; 127.0.0.1 unless given. */
  readonly host?: string;
}

export interface RunningServer {
  /** Such as `http://127.0.0.1:4180`. */
  readonly address: string;
  /** Closes event streams, stops measuring (it resumes at the next start), closes the database. */
  stop(): Promise<void>;
}

/** Opens the data folder and serves the screens and the API on a loopback address. */
export async function startServer(options: ServerOptions): Promise<Result<RunningServer, Failure>> {
  return fail(
    failure('data-folder-unusable', { folder: options.dataFolder, why: 'the store is not built yet' }),
  );
}
