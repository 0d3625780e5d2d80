import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where the project lies. */
export const home = fileURLToPath(new URL('../../', import.meta.url));

const made = new Set(['node_modules', 'dist', 'data', 'coverage', '.git', '.bench']);

/** Every file of the project, by its path from `home`: those that git tracks, or all that lie there without git. */
export const trackedFiles: readonly string[] = existsSync(`${home}.git`)
  ? execFileSync('git', ['ls-files', '-z'], { cwd: home, encoding: 'utf8' })
      .split('\0')
      .filter((path) => path !== '' && existsSync(home + path))
  : readdirSync(home, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => `${entry.parentPath}/${entry.name}`.slice(home.length).replace(/^\/+/, ''))
      .filter((path) => !path.split('/').some((folder) => made.has(folder)));

/** The text of a tracked file. */
export function textOf(path: string): string {
  return readFileSync(home + path, 'utf8');
}

/** Files that are read as text: no pictures, no documents. */
export const textFiles = trackedFiles.filter(
  (path) => !/\.(png|jpe?g|tiff?|webp|heic|jp2|pdf|ttf|woff2?|ico)$/i.test(path),
);

/** Source files below a folder, tests included. */
export function sourcesBelow(folder: string): string[] {
  return trackedFiles.filter((path) => path.startsWith(folder) && /\.(ts|tsx|css|mjs|html)$/.test(path));
}
