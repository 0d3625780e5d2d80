import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * Where the demo's pictures and its measured record lie. The compiler copies no data, so that built code
 * reaches back to the source folder: three folders up from source, four from what was built.
 */
export function keptFolder(): string {
  const inSource = new URL('../../../src/sample/saltreach/kept/', import.meta.url);
  const fromBuilt = new URL('../../../../src/sample/saltreach/kept/', import.meta.url);
  return fileURLToPath(existsSync(inSource) ? inSource : fromBuilt);
}
