import { randomInt } from 'node:crypto';
import { failure } from '../../foundation/failure.ts';
import { fail, ok, type Result } from '../../foundation/result.ts';
import type { LettingInState } from '../../records/device.ts';
import { createTryCounter } from './tryCounter.ts';

/** How long a code holds, s. Our rule: long enough to walk to the other room. */
export const codeSeconds = 300;
/** How often a code may be typed wrongly before it is void: 5 of 1,000,000 at a guess. */
export const wrongTriesAllowed = 5;
/** How many codes may be tried within ten minutes from one address, and from all together. */
export const triesAllowed = { each: 10, all: 60 } as const;
const triesWindowMs = 600_000;

/** The one code that may let a device in, if any. It is kept in memory only: a restart ends it. */
export interface LettingInDesk {
  /** A new code of six digits; the one before holds no longer. */
  open(): string;
  /** Ends the code, where one is open. */
  close(): void;
  /** Its `device` is the id of the one that used it, not its name. */
  state(): LettingInState;
  /**
   * Spends the code where it is the right one: it lets in once.
   * @param from the network address that tries
   * @returns `tries-too-many`, `code-over` or `code-wrong`
   */
  spend(typed: string, from: string): Result<null>;
  /** Says who came in with the code that was spent last. */
  tellUsed(deviceId: string): void;
}

interface OpenCode {
  readonly digits: string;
  readonly until: number;
  wrong: number;
  state: 'open' | 'used' | 'spoiled' | 'closed';
  device: string | null;
}

/** @param now the clock; tests set their own. */
export function createLettingInDesk(now: () => Date): LettingInDesk {
  let held: OpenCode | null = null;
  const tries = createTryCounter({ ...triesAllowed, windowMs: triesWindowMs, now: () => now().getTime() });
  const stateOf = (code: OpenCode | null): LettingInState['state'] => {
    if (code === null || code.state === 'closed') return 'none';
    return code.state === 'open' && now().getTime() >= code.until ? 'over' : code.state;
  };
  return {
    open() {
      const digits = String(randomInt(1_000_000)).padStart(6, '0');
      held = { digits, until: now().getTime() + codeSeconds * 1000, wrong: 0, state: 'open', device: null };
      return digits;
    },
    close() {
      if (held?.state === 'open') held.state = 'closed';
    },
    state() {
      const state = stateOf(held);
      const leftMs = state === 'open' ? held!.until - now().getTime() : 0;
      return { state, secondsLeft: Math.ceil(leftMs / 1000), device: held?.device ?? null };
    },
    spend(typed, from) {
      const waitMs = tries.waitMs(from);
      if (waitMs > 0) return fail(failure('tries-too-many', { minutes: Math.ceil(waitMs / 60_000) }));
      tries.count(from);
      if (held === null || stateOf(held) !== 'open') return fail(failure('code-over'));
      if (typed === held.digits) {
        held.state = 'used';
        return ok(null);
      }
      held.wrong += 1;
      if (held.wrong < wrongTriesAllowed)
        return fail(failure('code-wrong', { left: wrongTriesAllowed - held.wrong }, 'code'));
      held.state = 'spoiled';
      return fail(failure('code-over'));
    },
    tellUsed(device) {
      if (held?.state === 'used') held.device = device;
    },
  };
}
