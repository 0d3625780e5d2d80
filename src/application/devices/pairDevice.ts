import { ok, type Result } from '../../foundation/result.ts';
import type { Device } from '../../records/device.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { DeviceParts } from './deviceParts.ts';
import { newToken, sealToken } from './deviceToken.ts';

export interface PairedDevice {
  readonly device: Device;
  /** Told this once, to the device alone. */
  readonly token: string;
}

/**
 * Lets the device in that shows the right code, under a name that is free; it may be renamed at once.
 * @returns `tries-too-many`, `code-over` or `code-wrong`
 */
export async function pairDevice(
  { store, now, newId, pairing, tokenKey }: Omit<DeviceParts, 'shutOut'>,
  code: string,
  from: string,
): Promise<Result<PairedDevice>> {
  const spent = pairing.spend(code, from);
  if (!spent.ok) return spent;
  const token = newToken();
  const at = now().toISOString();
  const paired = await store.decide<PairedDevice, never>(async ({ devices }) => {
    const device: Device = {
      id: newId(),
      name: await freeName(devices),
      pairedAt: at,
      lastSeenAt: at,
      revokedAt: null,
    };
    await devices.add(device, sealToken(token, tokenKey));
    return ok({ device, token });
  });
  if (paired.ok) pairing.tellUsed(paired.value.device.id);
  return paired;
}

async function freeName(devices: KeptRecords['devices']): Promise<string> {
  for (let number = (await devices.list()).length + 1; ; number += 1) {
    const name = `Phone ${number}`;
    if ((await devices.named(name)) === null) return name;
  }
}
