import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';

/** How much one device may send within a day. */
export interface DailyUploads {
  readonly photographs: number;
  readonly bytes: number;
}

/** Our rule: more than a day at stone and press brings, and little enough that no phone fills the disk in a night. */
export const usualDailyUploads: DailyUploads = { photographs: 500, bytes: 10e9 };

const dayMs = 86_400_000;

/** Counts what devices send. */
export interface UploadAllowance {
  /**
   * Counts one more photograph; `uploads-too-many` where it would be more than a device may send within 24 hours.
   * @param device null for this machine, which may send what it likes
   */
  take(device: string | null, bytes: number): Result<null>;
}

/** Counts from the start of the program on. */
export function createUploadAllowance(
  now: () => Date,
  most: DailyUploads = usualDailyUploads,
): UploadAllowance {
  const sent = new Map<string, readonly { readonly at: number; readonly bytes: number }[]>();
  return {
    take(device, bytes) {
      if (device === null) return ok(null);
      const at = now().getTime();
      const recent = (sent.get(device) ?? []).filter((one) => at - one.at < dayMs);
      const sum = recent.reduce((total, one) => total + one.bytes, 0);
      if (recent.length >= most.photographs || sum + bytes > most.bytes) {
        const gigabytes = most.bytes / 1e9;
        return fail(failure('uploads-too-many', { count: most.photographs, gigabytes }));
      }
      sent.set(device, [...recent, { at, bytes }]);
      return ok(null);
    },
  };
}
