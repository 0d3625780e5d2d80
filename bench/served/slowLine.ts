import { once } from 'node:events';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';

/** A line to a server that carries so many bytes a second each way, whatever both ends would like. */
export interface SlowLine {
  /** Where it begins; a request must name the server's own host. */
  readonly address: string;
  /** Lets nothing through any more, and ends what is under way. */
  close(): Promise<void>;
}

const turnsASecond = 10;

/** @param bytesASecond for all connections of the line together, each way */
export async function openSlowLine(address: string, bytesASecond: number): Promise<SlowLine> {
  const { hostname, port } = new URL(address);
  const open = new Set<Socket>();
  const flows: { readonly from: Socket; readonly to: Socket; readonly upwards: boolean }[] = [];
  const line = createServer((near) => {
    const far = connect(Number(port), hostname);
    for (const socket of [near, far]) {
      open.add(socket);
      socket.pause();
      socket.on('error', () => {});
      socket.once('close', () => open.delete(socket));
    }
    near.once('close', () => far.destroy());
    flows.push({ from: near, to: far, upwards: true }, { from: far, to: near, upwards: false });
  }).listen(0, '127.0.0.1');
  await once(line, 'listening');
  const carry = setInterval(() => {
    for (const upwards of [true, false]) {
      let left = bytesASecond / turnsASecond;
      for (const { from, to, upwards: direction } of flows) {
        if (direction !== upwards || from.destroyed || to.destroyed) continue;
        // never more than goes in one turn is taken out of it
        const part = (from.read(Math.min(left, from.readableLength)) ?? null) as Buffer | null;
        if (part !== null) {
          left -= part.byteLength;
          to.write(part);
        } else if (from.readableEnded) to.end();
        if (left <= 0) break;
      }
    }
  }, 1000 / turnsASecond);
  return {
    address: `http://127.0.0.1:${(line.address() as AddressInfo).port}`,
    async close() {
      clearInterval(carry);
      for (const socket of open) socket.destroy();
      line.close();
      await once(line, 'close');
    },
  };
}
