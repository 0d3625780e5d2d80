import { ok, type Result } from '../../foundation/result.ts';
import type { Device } from '../../records/device.ts';
import type { KeptRecords } from '../../store/keptRecords.ts';
import type { DeviceParts } from './deviceParts.ts';
import { newToken, sealToken } from './deviceToken.ts';

export interface LetInDevice {
  readonly device: Device;
  /** Told this once, to the device alone. */
  readonly token: string;
}

/**
 * Lets the device in that shows the right code, under a name that is free; it may be renamed at once.
 * @returns `tries-too-many`, `code-over` or `code-wrong`
 */
export async function letDeviceIn(
  { store, now, newId, lettingIn, tokenKey }: Omit<DeviceParts, 'shutOut'>,
  code: string,
  from: string,
): Promise<Result<LetInDevice>> {
  const spent = lettingIn.spend(code, from);
  if (!spent.ok) return spent;
  const token = newToken();
  const at = now().toISOString();
  const letIn = await store.decide<LetInDevice, never>(async ({ devices }) => {
    const device: Device = {
      id: newId(),
      name: await freeName(devices),
      letInAt: at,
      lastSeenAt: at,
      shutOutAt: null,
    };
    await devices.add(device, sealToken(token, tokenKey));
    return ok({ device, token });
  });
  if (letIn.ok) lettingIn.tellUsed(letIn.value.device.id);
  return letIn;
}

async function freeName(devices: KeptRecords['devices']): Promise<string> {
  for (let number = (await devices.list()).length + 1; ; number += 1) {
    const name = `Phone ${number}`;
    if ((await devices.named(name)) === null) return name;
  }
}
