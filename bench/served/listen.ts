import { get } from 'node:http';

/** An open stream of events, as a page holds one. */
export interface Listening {
  /** How many events of runs it heard. */
  heard(): number;
  close(): void;
}

/** @param cookie of a device that was let in; null: this machine */
export function listen(address: string, cookie: string | null): Listening {
  let heard = 0;
  const asked = get(`${address}/api/events`, { headers: cookie ? { cookie } : {} }, (response) => {
    response.on('data', (chunk: Buffer) => {
      heard += chunk.toString().split('event: run').length - 1;
    });
    response.on('error', () => {});
  });
  asked.on('error', () => {});
  return { heard: () => heard, close: () => asked.destroy() };
}
