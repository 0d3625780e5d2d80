import { z } from 'zod';
import type { Caller, DeviceEntry, LettingInCode, LettingInState, NetworkState } from '../records/device.ts';

/** What a phone sends to be let in; spaces within the code are no matter. */
export const typedCodeSchema = z.object({
  code: z
    .string()
    .max(40)
    .transform((typed) => typed.replace(/\s/g, ''))
    .refine((digits) => /^\d{6}$/.test(digits), 'a code has six digits')
    .describe('The six digits that the other screen shows'),
});

/** What a device is to be called. */
export const deviceNameSchema = z.object({ name: z.string().trim().min(1, 'a name is needed').max(40) });

const namedDevice = z.object({ id: z.string(), name: z.string() });

export const callerSchema = z.object({
  kind: z.enum(['this-machine', 'device', 'stranger']),
  device: namedDevice.nullable(),
}) satisfies z.ZodType<Caller>;

export const deviceEntrySchema = namedDevice.extend({
  letInAt: z.string(),
  lastSeenAt: z.string().describe('To the hour'),
  shutOutAt: z.string().nullable(),
  standing: z.enum(['let-in', 'lapsed', 'shut-out']),
}) satisfies z.ZodType<DeviceEntry>;

export const deviceListSchema = z.object({ devices: z.array(deviceEntrySchema) });

const codePicture = z.object({ size: z.int(), path: z.string().describe('SVG path of what is dark') });

export const lettingInCodeSchema = z.object({
  code: z.string(),
  secondsLeft: z.int(),
  address: z.string(),
  picture: codePicture,
}) satisfies z.ZodType<LettingInCode>;

export const lettingInStateSchema = z.object({
  state: z.enum(['none', 'open', 'used', 'over', 'spoiled']),
  secondsLeft: z.int(),
  device: z.string().nullable(),
}) satisfies z.ZodType<LettingInState>;

export const networkStateSchema = z.object({
  open: z.boolean(),
  addresses: z.array(z.object({ address: z.string(), picture: codePicture })),
  certificate: z
    .object({ fingerprint: z.string(), until: z.string(), own: z.boolean() })
    .nullable()
    .describe('null over plain http'),
}) satisfies z.ZodType<NetworkState>;
