import { once } from 'node:events';
import { Readable } from 'node:stream';
import tar from 'tar-stream';

/** One file on its way into an archive. */
export interface ArchiveEntry {
  readonly name: string;
  /** How many bytes `content` gives; any other number of them ends the archive with an error. */
  readonly bytes: number;
  readonly changedAt: Date;
  readonly content: AsyncIterable<Uint8Array>;
}

/** One entry as it is read; its content must be read to its end before the next one comes. */
export interface ReadEntry {
  readonly name: string;
  readonly bytes: number;
  /** False for links, folders and whatever else an archive may hold. */
  readonly isFile: boolean;
  readonly content: AsyncIterable<Uint8Array>;
}

type Pack = ReturnType<typeof tar.pack>;

async function fill(pack: Pack, entries: AsyncIterable<ArchiveEntry>): Promise<void> {
  for await (const { name, bytes, changedAt, content } of entries) {
    const sink = pack.entry({ name, size: bytes, mtime: changedAt, mode: 0o644, type: 'file' });
    const closed = once(sink, 'close');
    for await (const chunk of content) if (!sink.write(chunk)) await once(sink, 'drain');
    sink.end();
    await closed;
  }
}

async function* bytesOf(entries: AsyncIterable<ArchiveEntry>, end: (pack: Pack) => void) {
  const pack = tar.pack();
  const filled = fill(pack, entries).then(
    () => end(pack),
    (error: Error) => pack.destroy(error),
  );
  for await (const chunk of pack) yield chunk as Uint8Array;
  await filled;
}

/**
 * The bytes of a POSIX tar archive of these entries, one entry after the other, without the empty blocks that end it.
 * Holds a few chunks in memory at a time, whatever the sizes; an error of an entry's content is thrown.
 */
export function openArchive(entries: AsyncIterable<ArchiveEntry>): AsyncIterable<Uint8Array> {
  return bytesOf(entries, (pack) => pack.push(null));
}

/** As `openArchive`, with the empty blocks that end an archive. */
export function endedArchive(entries: AsyncIterable<ArchiveEntry>): AsyncIterable<Uint8Array> {
  return bytesOf(entries, (pack) => pack.finalize());
}

/** An archive that cannot be read any further. */
export class BrokenArchive extends Error {
  /** Whether the bytes ended inside an entry; else a heading is damaged, or the bytes themselves could not be read. */
  readonly endsEarly: boolean;

  constructor(cause: Error) {
    super(cause.message, { cause });
    this.endsEarly = cause.message === 'Unexpected end of data';
  }
}

/** The entries of an archive in their order. Throws `BrokenArchive`, also while an entry's content is read. */
export async function* readArchive(bytes: AsyncIterable<Uint8Array>): AsyncIterable<ReadEntry> {
  const extract = tar.extract();
  const source = Readable.from(bytes, { objectMode: false });
  source.on('error', (error) => extract.destroy(error));
  source.pipe(extract);
  const entries = extract[Symbol.asyncIterator]();
  try {
    for (;;) {
      const next = await entries.next().catch(breaking);
      if (next.done) return;
      const { name, size = 0, type } = next.value.header;
      yield { name, bytes: size, isFile: type === 'file', content: contentOf(next.value) };
    }
  } finally {
    source.destroy();
    extract.destroy();
  }
}

async function* contentOf(entry: AsyncIterable<Uint8Array>): AsyncIterable<Uint8Array> {
  const chunks = entry[Symbol.asyncIterator]();
  for (;;) {
    const next = await chunks.next().catch(breaking);
    if (next.done) return;
    yield next.value;
  }
}

function breaking(cause: Error): never {
  throw new BrokenArchive(cause);
}
