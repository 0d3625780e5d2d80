import { createServer, type RequestListener, type Server } from 'node:http';
import { createServer as createSecureServer, type Server as SecureServer } from 'node:https';
import { createServer as createSocketServer, type Socket } from 'node:net';
import type { ReadyCertificate } from '../../application/network/networkCertificate.ts';
import { inUrl } from '../guards/doorOf.ts';
import { headTimeoutMs, idleTimeoutMs, keptConnectionMs, requestTimeoutMs } from '../limits.ts';

type Certificate = Pick<ReadyCertificate, 'certificate' | 'key'>;

/** One address of this machine on which phones are answered. */
export interface NetworkDoor {
  readonly address: string;
  /** Shows another certificate from the next connection on. */
  show(certificate: Certificate): void;
  close(): Promise<void>;
}

export interface DoorOptions {
  readonly address: string;
  readonly port: number;
  readonly answer: RequestListener;
  /** null: plain http. */
  readonly certificate: Certificate | null;
}

/** How many connections one door holds; a browser opens six. */
const connectionsAllowed = 400;

/**
 * Listens on one address. With a certificate, whoever comes by plain http is told the https address instead.
 * Throws the system's error (`EADDRINUSE`, `EADDRNOTAVAIL`) where it cannot.
 */
export async function openDoor({ address, port, answer, certificate }: DoorOptions): Promise<NetworkDoor> {
  const limits = {
    requestTimeout: requestTimeoutMs,
    headersTimeout: headTimeoutMs,
    keepAliveTimeout: keptConnectionMs,
  };
  const secure =
    certificate && createSecureServer({ ...pem(certificate), ...limits, minVersion: 'TLSv1.2' }, answer);
  const plain = createServer(limits, secure ? pointTo(`https://${inUrl(address)}:${port}`) : answer);
  for (const server of [plain, secure]) server?.setTimeout(idleTimeoutMs);
  const front = secure ? inFrontOf(secure, plain) : plain;
  front.maxConnections = connectionsAllowed;
  const open = new Set<Socket>();
  front.on('connection', (socket: Socket) => {
    open.add(socket);
    socket.once('close', () => open.delete(socket));
  });
  await new Promise<void>((listening, failed) => {
    front.once('error', failed);
    front.listen({ host: address, port }, () => {
      front.off('error', failed);
      // an address that goes with its net must not end the program
      front.on('error', () => {});
      listening();
    });
  });
  return {
    address,
    show: (shown) => secure?.setSecureContext(pem(shown)),
    close: () =>
      new Promise((closed) => {
        front.close(() => closed());
        for (const socket of open) socket.destroy();
      }),
  };
}

function pem({ certificate, key }: Certificate) {
  return { cert: certificate, key };
}

/** Answers everything with the way to the https address; the address is this machine's own, never what was sent. */
function pointTo(base: string): RequestListener {
  return (request, response) => {
    const path = request.url?.startsWith('/') ? request.url : '/';
    response.writeHead(307, { location: base + path, connection: 'close' }).end();
    request.resume();
  };
}

/** Tells by the first byte of a connection whether TLS begins (RFC 8446 §5.1: record type 22), and hands it on. */
function inFrontOf(secure: SecureServer, plain: Server) {
  return createSocketServer({ pauseOnConnect: false }, (socket: Socket) => {
    const giveUp = () => socket.destroy();
    socket.setTimeout(headTimeoutMs, giveUp);
    socket.on('error', giveUp);
    socket.once('readable', () => {
      const first: Buffer | null = socket.read(1);
      if (first === null) {
        giveUp();
        return;
      }
      socket.setTimeout(0);
      socket.off('timeout', giveUp);
      socket.off('error', giveUp);
      socket.unshift(first);
      (first[0] === 22 ? secure : plain).emit('connection', socket);
    });
  });
}
