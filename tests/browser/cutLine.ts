import { connect, createServer, type Socket } from 'node:net';
import { onTestFinished } from 'vitest';

/** A line to a server that can be cut. */
export interface CutLine {
  /** Where a page reaches the server through it. */
  readonly address: string;
  /** Breaks the line after so many more bytes towards the server, once for each number. */
  cutAfter(...bytes: readonly number[]): void;
  /** How often it broke so far. */
  cuts(): number;
}

/**
 * Opens a line on this machine to a server on its loopback address. What names the line's port is told the server as its
 * own, so that its guards take it for one of its pages.
 */
export async function openCutLine(address: string): Promise<CutLine> {
  const { port } = new URL(address);
  const open = new Set<Socket>();
  const waiting: number[] = [];
  let gone = 0;
  let cuts = 0;
  let own = '';
  const listener = createServer((page) => {
    const server = connect(Number(port), '127.0.0.1');
    for (const [one, other] of [
      [page, server],
      [server, page],
    ] as const) {
      open.add(one);
      one.on('error', () => other.destroy());
      one.on('close', () => {
        open.delete(one);
        other.destroy();
      });
    }
    page.on('data', (chunk) => {
      gone += chunk.byteLength;
      server.write(own === '' ? chunk : renamed(chunk, own, `127.0.0.1:${port}`));
      if (waiting[0] === undefined || gone < waiting[0]) return;
      waiting.shift();
      gone = 0;
      cuts += 1;
      for (const socket of open) socket.destroy();
    });
    server.on('data', (chunk) => page.write(chunk));
  });
  // the name is replaced where it stands, so both must be as long as each other
  do {
    if (listener.listening) await new Promise((resolve) => listener.close(resolve));
    await new Promise<void>((resolve) => listener.listen(0, '127.0.0.1', resolve));
    own = `127.0.0.1:${(listener.address() as { port: number }).port}`;
  } while (own.length !== `127.0.0.1:${port}`.length);
  onTestFinished(() => {
    for (const socket of open) socket.destroy();
    listener.close();
  });
  return {
    address: `http://${own}`,
    cutAfter(...bytes) {
      gone = 0;
      waiting.push(...bytes);
    },
    cuts: () => cuts,
  };
}

function renamed(chunk: Buffer, from: string, to: string): Buffer {
  const copy = Buffer.from(chunk);
  for (let place = copy.indexOf(from); place >= 0; place = copy.indexOf(from, place + 1))
    copy.write(to, place);
  return copy;
}
