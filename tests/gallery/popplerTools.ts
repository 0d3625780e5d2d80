import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const execute = promisify(execFile);

async function run(tool: string, given: readonly string[]): Promise<string> {
  try {
    return (await execute(tool, given)).stdout;
  } catch (cause) {
    throw new Error(`${tool} did not run; it comes with poppler-utils`, { cause });
  }
}

/** The pages of a PDF as grey PNG files, in order, from `topPx` down, by `pdftoppm` (Debian: poppler-utils). */
export async function pdfPages(
  pdf: Uint8Array,
  dotsPerInch: number,
  topPx = 0,
): Promise<readonly Uint8Array[]> {
  return inFolder(pdf, async (folder, file) => {
    const how = ['-r', String(dotsPerInch), '-y', String(topPx), '-gray', '-png'];
    await run('pdftoppm', [...how, file, join(folder, 'page')]);
    const names = (await readdir(folder)).filter((name) => name.endsWith('.png')).sort();
    return Promise.all(names.map((name) => readFile(join(folder, name))));
  });
}

/** The words of a PDF as laid out, pages parted by form feeds, by `pdftotext` (Debian: poppler-utils). */
export async function pdfText(pdf: Uint8Array): Promise<string> {
  return inFolder(pdf, (_folder, file) => run('pdftotext', ['-layout', file, '-']));
}

async function inFolder<T>(pdf: Uint8Array, work: (folder: string, file: string) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'stonetone-gallery-'));
  try {
    const file = join(folder, 'sheet.pdf');
    await writeFile(file, pdf);
    return await work(folder, file);
  } finally {
    await rm(folder, { recursive: true });
  }
}
