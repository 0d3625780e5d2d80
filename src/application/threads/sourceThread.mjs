// Starts a thread on a TypeScript module. The loader must be registered inside the thread: given as `--import` it
// does not reach threads (Node 20). Only used from source; the built package starts its modules directly.
import { register } from 'tsx/esm/api';

register();
await import(process.argv[2]);
