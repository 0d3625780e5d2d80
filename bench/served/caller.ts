import { Agent, request } from 'node:http';

/** What was answered, and how long it took from the first byte sent to the last one received, ms. */
export interface Answered {
  readonly status: number;
  readonly ms: number;
  readonly bytes: Buffer;
  readonly cookie: string | null;
  json<T>(): T;
}

/** One client with connections of its own, which it keeps open, as a browser does. */
export interface Caller {
  /** @param body goes as JSON, a buffer as it is */
  ask(method: string, path: string, body?: unknown): Promise<Answered>;
  /** The same, whose JSON answer is wanted; throws what was refused. */
  want<T>(method: string, path: string, body?: unknown): Promise<T>;
  /** Sends a photograph as a form. */
  upload(fileName: string, content: Uint8Array): Promise<Answered>;
  close(): void;
}

/** A browser opens so many connections to one host. */
const connections = 6;
const boundary = 'edge-of-the-form';

/**
 * @param cookie of a device that was let in
 * @param host whom it asks, where it goes there by another address; then what it is sent may be packed
 */
export function createCaller(
  address: string,
  cookie: string | null = null,
  host: string | null = null,
): Caller {
  const agent = new Agent({ keepAlive: true, maxSockets: connections });

  function send(method: string, path: string, type: string | null, body: Buffer | null): Promise<Answered> {
    const begun = performance.now();
    const headers = {
      ...(type && { 'content-type': type }),
      ...(body && { 'content-length': body.byteLength }),
      ...(cookie && { cookie }),
      // as a phone asks from afar: what comes packed is counted as it came
      ...(host && { host, 'accept-encoding': 'gzip' }),
    };
    return new Promise((resolve, reject) => {
      const asked = request(address + path, { method, agent, headers }, (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('error', reject);
        response.on('end', () => {
          const bytes = Buffer.concat(chunks);
          const [set] = response.headers['set-cookie'] ?? [];
          resolve({
            status: response.statusCode!,
            ms: performance.now() - begun,
            bytes,
            cookie: set?.split(';')[0] ?? null,
            json: <T>() => JSON.parse(bytes.toString()) as T,
          });
        });
      });
      asked.on('error', (error: NodeJS.ErrnoException) => {
        // a kept connection may be let go in the very moment it is used again: a browser then asks on a new one
        if (asked.reusedSocket && error.code === 'ECONNRESET') resolve(send(method, path, type, body));
        else reject(error);
      });
      asked.end(body);
    });
  }

  function ask(method: string, path: string, body?: unknown): Promise<Answered> {
    if (body === undefined) return send(method, path, null, null);
    if (Buffer.isBuffer(body)) return send(method, path, 'application/octet-stream', body);
    return send(method, path, 'application/json', Buffer.from(JSON.stringify(body)));
  }

  return {
    ask,
    async want<T>(method: string, path: string, body?: unknown) {
      const answer = await ask(method, path, body);
      if (answer.status >= 400) throw new Error(`${answer.status} ${method} ${path}: ${answer.bytes}`);
      return answer.json<T>();
    },
    upload(fileName, content) {
      const head = `--${boundary}\r\ncontent-disposition: form-data; name="photograph"; filename="${fileName}"\r\n\r\n`;
      const body = Buffer.concat([Buffer.from(head), content, Buffer.from(`\r\n--${boundary}--\r\n`)]);
      return send('POST', '/api/photographs', `multipart/form-data; boundary=${boundary}`, body);
    },
    close: () => agent.destroy(),
  };
}
