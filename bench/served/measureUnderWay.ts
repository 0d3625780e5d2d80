import { createHash } from 'node:crypto';
import { connect } from 'node:net';
import { sampleMeasureInput } from '../../src/sample/saltreach/sampleComparison.ts';
import { createCaller } from './caller.ts';

/**
 * Leaves a server with a measurement under way and uploads half sent, whose sockets end with the server.
 * Throws where it refuses.
 */
export async function measureUnderWay(address: string): Promise<void> {
  const caller = createCaller(address);
  const input = await sampleMeasureInput();
  const photograph = async (name: string, content: Uint8Array) =>
    (await caller.upload(name, content)).json<{ id: string }>().id;
  const stone = {
    photograph: await photograph('stone.jpg', input.stone.bytes),
    corners: input.stone.corners,
  };
  const proof = {
    photograph: await photograph('print.jpg', input.proof.bytes),
    corners: input.proof.corners,
  };
  // another title is the same result, another size is not
  const [width, height] = input.sizeMm;
  const request = {
    title: 'under way',
    sizeMm: [width, height + 0.001 * (process.pid % 1000)],
    stone,
    proof,
  };
  const { id } = await caller.want<{ id: string }>('POST', '/api/comparisons', request);
  for (;;) {
    const { state } = await caller.want<{ state: string }>('GET', `/api/comparisons/${id}`);
    if (state === 'measuring') break;
    if (state !== 'waiting') throw new Error(`it is ${state} already`);
  }
  const { port, host } = new URL(address);
  for (let n = 0; n < 5; n++) {
    const socket = connect(Number(port), '127.0.0.1');
    socket.on('error', () => {});
    const head = `POST /api/photographs HTTP/1.1\r\nhost: ${host}\r\ncontent-type: multipart/form-data; boundary=e\r\ncontent-length: 9000000\r\n\r\n`;
    const part = `--e\r\ncontent-disposition: form-data; name="photograph"; filename="${n}.jpg"\r\n\r\n`;
    socket.write(head + part);
    socket.write(createHash('sha256').update(String(n)).digest());
    socket.unref();
  }
  caller.close();
}
