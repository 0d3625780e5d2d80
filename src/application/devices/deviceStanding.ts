import type { Device, DeviceEntry } from '../../records/device.ts';

/** A device that was not seen for so long must be let in again, days. Our rule. */
export const daysUntilLapsed = 30;

/** Whether a device is let in at a moment. */
export function deviceStanding(device: Device, now: Date): DeviceEntry['standing'] {
  if (device.shutOutAt !== null) return 'shut-out';
  const unseenMs = now.getTime() - Date.parse(device.lastSeenAt);
  return unseenMs > daysUntilLapsed * 86_400_000 ? 'lapsed' : 'let-in';
}
