import { Socket } from 'node:net';
import type { FastifyRequest } from 'fastify';
import { deviceOfToken } from '../../application/devices/deviceOfToken.ts';
import type { Services } from '../../application/openServices.ts';
import { type Failure, failure } from '../../foundation/failure.ts';
import type { Caller } from '../../records/device.ts';
import { tokenOf } from './deviceCookie.ts';
import { reachOf } from './deviceReach.ts';
import type { Door } from './doorOf.ts';

const callers = new WeakMap<FastifyRequest, Caller>();

const thisMachine: Caller = { kind: 'this-machine', device: null };
const stranger: Caller = { kind: 'stranger', device: null };

/** Who asks; a request that went past no guard comes from a stranger. */
export function callerOf(request: FastifyRequest): Caller {
  return callers.get(request) ?? stranger;
}

/** What is logged over a request, under the name of the device that sent it: no device logs as another. */
export function namedByDevice<Logged extends { readonly device: string | null }>(
  request: FastifyRequest,
  logged: Logged,
): Logged {
  const { device } = callerOf(request);
  return device === null ? logged : { ...logged, device: device.name };
}

/** Whether a request came over https. */
export function isSecure(request: FastifyRequest): boolean {
  return 'encrypted' in request.raw.socket && request.raw.socket.encrypted === true;
}

/**
 * Judges who may ask for what. Whoever comes through the network's door must be a device that was let in, but for the
 * screens themselves, which hold nothing of the room. A device that is shut out loses its open connections at once.
 */
export function createAdmission(
  services: Services,
): (request: FastifyRequest, door: Door) => Promise<Failure | null> {
  const connections = new Map<string, Set<Socket>>();
  // the one over which a device took itself out must still carry the answer
  const leaving = new WeakSet<Socket>();
  services.shutOut.subscribe((id) => {
    for (const socket of connections.get(id) ?? []) if (!leaving.has(socket)) socket.destroy();
    connections.delete(id);
  });
  function remember(id: string, socket: unknown): void {
    // one that was asked without a connection has none to lose
    if (!(socket instanceof Socket)) return;
    const open = connections.get(id) ?? new Set();
    connections.set(id, open);
    if (open.has(socket)) return;
    open.add(socket);
    socket.once('close', () => open.delete(socket));
  }

  return async (request, door) => {
    if (door === 'this-machine') {
      callers.set(request, thisMachine);
      return null;
    }
    const token = tokenOf(request.headers.cookie, isSecure(request));
    const device = token === null ? null : await deviceOfToken(services, token);
    const caller: Caller =
      device === null ? stranger : { kind: 'device', device: { id: device.id, name: device.name } };
    callers.set(request, caller);
    if (device !== null) remember(device.id, request.raw.socket);
    const fault = judgeReach(request, caller);
    if (fault === null && request.method === 'POST' && request.routeOptions.url?.endsWith('/shut-out'))
      leaving.add(request.raw.socket);
    return fault;
  };
}

function judgeReach(request: FastifyRequest, { device }: Caller): Failure | null {
  const path = request.url.split('?')[0]!;
  const page = !/^\/api(?:\/|$)/i.test(path) && (request.method === 'GET' || request.method === 'HEAD');
  if (page && !request.routeOptions.url?.startsWith('/api')) return null;
  const reach = reachOf(request.method, request.routeOptions.url);
  if (reach === 'anybody') return null;
  if (device === null) return failure('not-let-in');
  if (reach === 'device') return null;
  const itself = (request.params as { id?: string } | undefined)?.id === device.id;
  return reach === 'device-itself' && itself ? null : failure('this-machine-only');
}
