import type { Device } from '../../records/device.ts';
import type { DeviceParts } from './deviceParts.ts';
import { deviceStanding } from './deviceStanding.ts';
import { sealToken } from './deviceToken.ts';

const minuteMs = 60_000;

/** The device that shows this token; null for one that is unknown, was shut out or has lapsed. */
export async function deviceOfToken(
  { store, now, tokenKey }: Pick<DeviceParts, 'store' | 'now' | 'tokenKey'>,
  token: string,
): Promise<Device | null> {
  const device = await store.devices.sealed(sealToken(token, tokenKey));
  if (device === null || deviceStanding(device, now()) !== 'let-in') return null;
  // not at every request, since each is a write to the disk; but as finely as a screen tells it
  if (now().getTime() - Date.parse(device.lastSeenAt) >= minuteMs)
    await store.devices.seen(device.id, now().toISOString());
  return device;
}
