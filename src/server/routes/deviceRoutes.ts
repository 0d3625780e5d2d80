import { z } from 'zod';
import { letDeviceIn } from '../../application/devices/letDeviceIn.ts';
import {
  listDevices,
  readLettingIn,
  renameDevice,
  shutDeviceOut,
} from '../../application/devices/manageDevices.ts';
import { codePicture } from '../../application/network/codePicture.ts';
import type { Services } from '../../application/openServices.ts';
import { idSchema } from '../../contract/common.ts';
import {
  callerSchema,
  deviceEntrySchema,
  deviceListSchema,
  deviceNameSchema,
  lettingInCodeSchema,
  lettingInStateSchema,
  networkStateSchema,
  typedCodeSchema,
} from '../../contract/device.ts';
import { failure } from '../../foundation/failure.ts';
import type {
  Caller,
  DeviceEntry,
  LettingInCode,
  LettingInState,
  NetworkState,
} from '../../records/device.ts';
import type { App } from '../app.ts';
import { sendFailure } from '../failureReply.ts';
import { callerOf, isSecure } from '../guards/admitCaller.ts';
import { goneCookie, tokenCookie } from '../guards/deviceCookie.ts';
import { answerOf } from './answerOf.ts';
import { refusals } from './refusals.ts';

const tags = ['devices'];
const params = z.object({ id: idSchema });
const caller = answerOf<Caller>(callerSchema);
const device = answerOf<DeviceEntry>(deviceEntrySchema);
const list = answerOf<{ devices: readonly DeviceEntry[] }>(deviceListSchema);
const networkState = answerOf<NetworkState>(networkStateSchema);
const lettingInCode = answerOf<LettingInCode>(lettingInCodeSchema);
const lettingInState = answerOf<LettingInState>(lettingInStateSchema);

/** Phones and tablets: the network they come by, the code that lets one in, which there are, and shutting one out. */
export function addDeviceRoutes(app: App, services: Services, network: () => NetworkState): void {
  app.get(
    '/api/caller',
    {
      schema: {
        tags,
        summary: 'Who asks: this machine, a device that was let in, or a stranger',
        response: { 200: caller },
      },
    },
    async (request, reply) => reply.send(callerOf(request)),
  );

  app.get(
    '/api/network',
    { schema: { tags, summary: 'How phones reach this machine', response: { 200: networkState } } },
    async (_request, reply) => reply.send(network()),
  );

  app.post(
    '/api/letting-in',
    {
      schema: {
        tags,
        summary: 'Ask for a code that lets one device in; the one before holds no longer',
        response: { 201: lettingInCode, ...refusals },
      },
    },
    async (_request, reply) => {
      const { open, addresses } = network();
      const [first] = addresses;
      if (first === undefined) {
        const why = open ? 'it is on no network now' : 'it answers itself alone';
        return sendFailure(reply, failure('network-closed', { why }));
      }
      const code = services.lettingIn.open();
      const { secondsLeft } = services.lettingIn.state();
      // behind the #, it is sent to no server and stands in no log
      const picture = codePicture(`${first.address}/join#${code}`);
      return reply.code(201).send({ code, secondsLeft, address: `${first.address}/join`, picture });
    },
  );

  app.get(
    '/api/letting-in',
    { schema: { tags, summary: 'What became of the last code', response: { 200: lettingInState } } },
    async (_request, reply) => reply.send(await readLettingIn(services)),
  );

  app.delete(
    '/api/letting-in',
    { schema: { tags, summary: 'End the code that is open' } },
    async (_request, reply) => {
      services.lettingIn.close();
      return reply.code(204).send();
    },
  );

  app.get(
    '/api/devices',
    { schema: { tags, summary: 'All devices that were ever let in, newest first', response: { 200: list } } },
    async (_request, reply) => reply.send({ devices: await listDevices(services) }),
  );

  app.post(
    '/api/devices',
    {
      schema: {
        tags,
        summary: 'Be let in with the code; the answer sets the cookie that a device shows from then on',
        body: typedCodeSchema,
        response: { 201: caller, ...refusals },
      },
    },
    async (request, reply) => {
      const letIn = await letDeviceIn(services, request.body.code, request.ip);
      if (!letIn.ok) {
        if (letIn.error.code === 'tries-too-many') reply.header('retry-after', '600');
        return sendFailure(reply, letIn.error);
      }
      const { device, token } = letIn.value;
      reply.header('set-cookie', tokenCookie(token, isSecure(request)));
      return reply.code(201).send({ kind: 'device', device: { id: device.id, name: device.name } });
    },
  );

  app.put(
    '/api/devices/:id/name',
    {
      schema: {
        tags,
        summary: 'Give a device another name',
        params,
        body: deviceNameSchema,
        response: { 200: device, ...refusals },
      },
    },
    async (request, reply) => {
      const renamed = await renameDevice(services, request.params.id, request.body.name);
      return renamed.ok ? reply.send(renamed.value) : sendFailure(reply, renamed.error);
    },
  );

  app.post(
    '/api/devices/:id/shut-out',
    {
      schema: {
        tags,
        summary: 'Shut a device out, for good, at once',
        params,
        response: { 200: device, ...refusals },
      },
    },
    async (request, reply) => {
      const shutOut = await shutDeviceOut(services, request.params.id);
      if (!shutOut.ok) return sendFailure(reply, shutOut.error);
      if (callerOf(request).kind === 'device')
        reply.header('set-cookie', goneCookie(isSecure(request))).header('connection', 'close');
      return reply.send(shutOut.value);
    },
  );
}
