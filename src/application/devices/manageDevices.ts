import { type Failure, failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { Device, DeviceEntry, LettingInState } from '../../records/device.ts';
import type { DeviceParts } from './deviceParts.ts';
import { deviceStanding } from './deviceStanding.ts';

type Parts = Pick<DeviceParts, 'store' | 'now'>;

function noSuchDevice(): Failure {
  return failure('not-found', { what: 'such device' });
}

/** All devices that were ever let in, newest first. */
export async function listDevices({ store, now }: Parts): Promise<readonly DeviceEntry[]> {
  const at = now();
  return (await store.devices.list()).map((device) => entryOf(device, at));
}

/** What became of the last code, with the name that the device which used it has now. */
export async function readLettingIn({
  store,
  lettingIn,
}: Pick<DeviceParts, 'store' | 'lettingIn'>): Promise<LettingInState> {
  const state = lettingIn.state();
  const device = state.device === null ? null : await store.devices.find(state.device);
  return { ...state, device: device?.name ?? null };
}

/**
 * Gives a device another name; what it logs from now on carries it.
 * @returns `not-found`, or `name-taken` where any device, also one shut out, has it
 */
export function renameDevice({ store, now }: Parts, id: string, name: string): Promise<Result<DeviceEntry>> {
  return store.decide<DeviceEntry, Failure>(async ({ devices }) => {
    const device = await devices.find(id);
    if (device === null) return fail(noSuchDevice());
    const other = await devices.named(name);
    if (other !== null && other.id !== id)
      return fail(failure('name-taken', { what: 'device (let in now or before)', name }, 'name'));
    await devices.rename(id, name);
    return ok(entryOf({ ...device, name }, now()));
  });
}

/**
 * Shuts a device out, for good; what it has under way ends at once. Once more changes nothing.
 * @returns `not-found`
 */
export async function shutDeviceOut(
  { store, now, shutOut }: Pick<DeviceParts, 'store' | 'now' | 'shutOut'>,
  id: string,
): Promise<Result<DeviceEntry>> {
  const at = now();
  const outcome = await store.decide<DeviceEntry, Failure>(async ({ devices }) => {
    const device = await devices.find(id);
    if (device === null) return fail(noSuchDevice());
    const shutOutAt = device.shutOutAt ?? at.toISOString();
    if (device.shutOutAt === null) await devices.shutOut(id, shutOutAt);
    return ok(entryOf({ ...device, shutOutAt }, at));
  });
  if (outcome.ok) shutOut.announce(id);
  return outcome;
}

function entryOf(device: Device, now: Date): DeviceEntry {
  return { ...device, standing: deviceStanding(device, now) };
}
