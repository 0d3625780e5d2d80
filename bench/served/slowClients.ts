import { connect, type Socket } from 'node:net';

/** Clients that hold on to what they have: connections that say nothing, uploads and answers at a trickle. */
export interface SlowClients {
  /** How many connections of each kind are still open. */
  open(): Readonly<Record<'silent' | 'sending' | 'reading', number>>;
  close(): void;
}

const trickleBytes = 1000;
const trickleEveryMs = 1000;

/**
 * @param silent connections that never say anything
 * @param each so many that send a photograph at 1 KB/s, and that read a large answer at 1 KB/s
 * @param path whose answer is read
 */
export function openSlowClients(
  address: string,
  { silent, each, path }: { readonly silent: number; readonly each: number; readonly path: string },
): SlowClients {
  const { port, hostname, host } = new URL(address);
  const sockets: { readonly kind: 'silent' | 'sending' | 'reading'; readonly socket: Socket }[] = [];
  const timers: NodeJS.Timeout[] = [];
  const open = (kind: (typeof sockets)[number]['kind']): Socket => {
    const socket = connect(Number(port), hostname);
    socket.on('error', () => {});
    sockets.push({ kind, socket });
    return socket;
  };
  // what is not read is never seen to end
  for (let count = 0; count < silent; count++) open('silent').resume();
  for (let count = 0; count < each; count++) {
    const sending = open('sending');
    sending.write(
      `POST /api/photographs HTTP/1.1\r\nhost: ${host}\r\ncontent-type: multipart/form-data; boundary=e\r\n` +
        'content-length: 9000000\r\n\r\n--e\r\ncontent-disposition: form-data; name="photograph"; filename="slow.jpg"\r\n\r\n',
    );
    sending.resume();
    timers.push(setInterval(() => sending.write(Buffer.alloc(trickleBytes, 1)), trickleEveryMs));
    const reading = open('reading');
    reading.write(`GET ${path} HTTP/1.1\r\nhost: ${host}\r\n\r\n`);
    reading.pause();
    timers.push(setInterval(() => reading.read(trickleBytes), trickleEveryMs));
  }
  return {
    open() {
      const count = { silent: 0, sending: 0, reading: 0 };
      for (const { kind, socket } of sockets) if (!socket.closed && !socket.readableEnded) count[kind] += 1;
      return count;
    },
    close() {
      for (const timer of timers) clearInterval(timer);
      for (const { socket } of sockets) socket.destroy();
    },
  };
}
