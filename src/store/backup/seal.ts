import { type ArchiveEntry, endedArchive } from './archive.ts';

/** How many bytes a seal takes: heading, hash, and the two empty blocks that end an archive. */
export const sealBytes = 2048;

/**
 * The end of a backup: an entry with the SHA-256 of every byte before it, and the blocks that end the archive.
 * It has one form alone, so that whoever reads a backup can tell every byte of it.
 */
export async function sealOf(sha256: string): Promise<Uint8Array> {
  async function* only(): AsyncIterable<ArchiveEntry> {
    const text = Buffer.from(`${sha256}\n`);
    yield {
      name: 'seal.sha256',
      bytes: text.byteLength,
      changedAt: new Date(0),
      content: (async function* () {
        yield text;
      })(),
    };
  }
  const chunks: Uint8Array[] = [];
  for await (const chunk of endedArchive(only())) chunks.push(chunk);
  return Buffer.concat(chunks);
}
