import type { DeviceAngles } from './levelTilt.ts';
import type { DeviceMotion } from './stillness.ts';

/**
 * Whether a device's level can be felt: `waiting` until it tells something, `press-needed` where it asks for consent by
 * a press, `none` where it has told nothing, `refused` where consent was refused.
 */
export type SensesState = 'waiting' | 'press-needed' | 'felt' | 'none' | 'refused';

/** The level and motion of the device in hand. */
export interface DeviceSenses {
  readonly state: () => SensesState;
  /** null: nothing told yet. */
  readonly angles: () => DeviceAngles | null;
  readonly motion: () => DeviceMotion;
  /** Asks for consent; only out of a press. */
  readonly ask: () => Promise<void>;
  readonly stop: () => void;
}

/** A device that has told nothing for so long has no sensor. */
const silenceMs = 2_000;

/** Constructor of an event that some browsers only send after consent. */
type Consent = { readonly requestPermission?: () => Promise<'granted' | 'denied'> } | undefined;

/** The parts of a window that senses need; a test hands in its own. */
export interface SensingWindow extends Pick<EventTarget, 'addEventListener' | 'removeEventListener'> {
  readonly DeviceOrientationEvent?: unknown;
  readonly DeviceMotionEvent?: unknown;
}

/** Listens to the device's sensors until stopped. */
export function listenToDevice(page: SensingWindow): DeviceSenses {
  const consents = [page.DeviceOrientationEvent, page.DeviceMotionEvent] as Consent[];
  const needsPress = consents.some((kind) => typeof kind?.requestPermission === 'function');
  let angles: DeviceAngles | null = null;
  let motion: DeviceMotion = { turning: null, pushing: null };
  let state: SensesState = page.DeviceOrientationEvent ? (needsPress ? 'press-needed' : 'waiting') : 'none';
  let silence: ReturnType<typeof setTimeout> | undefined;

  const turned = (event: Event) => {
    const { beta, gamma } = event as DeviceOrientationEvent;
    // A machine without a sensor sends one event that tells nothing.
    if (beta === null || gamma === null || beta === undefined || gamma === undefined) return;
    angles = { beta, gamma };
    state = 'felt';
  };
  const moved = (event: Event) => {
    const { rotationRate, acceleration } = event as DeviceMotionEvent;
    motion = {
      turning: length(rotationRate?.alpha, rotationRate?.beta, rotationRate?.gamma),
      pushing: length(acceleration?.x, acceleration?.y, acceleration?.z),
    };
  };
  const listen = () => {
    page.addEventListener('deviceorientation', turned);
    page.addEventListener('devicemotion', moved);
    clearTimeout(silence);
    silence = setTimeout(() => {
      if (state === 'waiting') state = 'none';
    }, silenceMs);
  };
  // Some browsers know consent and yet tell without asking.
  if (state !== 'none') listen();

  return {
    state: () => state,
    angles: () => angles,
    motion: () => motion,
    ask: async () => {
      const answers = await Promise.all(
        consents.map((kind) => kind?.requestPermission?.().catch(() => 'denied' as const)),
      );
      if (state === 'felt') return;
      state = answers[0] === 'denied' ? 'refused' : 'waiting';
      if (state === 'waiting') listen();
    },
    stop: () => {
      clearTimeout(silence);
      page.removeEventListener('deviceorientation', turned);
      page.removeEventListener('devicemotion', moved);
    },
  };
}

function length(...parts: readonly (number | null | undefined)[]): number | null {
  const told = parts.filter((part) => typeof part === 'number');
  return told.length === 0 ? null : Math.hypot(...told);
}
