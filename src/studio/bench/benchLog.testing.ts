import type { EtchPlan, PlannedZone, ScheduleStep } from '../../records/etch.ts';
import type { KeptPlan } from '../../records/keptPlan.ts';
import type { RunEvent, RunEventKind, RunPayloads } from '../../records/run.ts';

export const begin = Date.parse('2026-03-04T09:00:00Z');

interface Given {
  /** Seconds from the beginning, by a clock that is right. */
  readonly s: number;
  readonly device?: string;
  /** How far the device's clock is off, seconds; above 0: ahead. */
  readonly off?: number;
  /** Seconds until it was kept. */
  readonly delay?: number;
  readonly says?: boolean;
  readonly clientId?: string;
  readonly actor?: string;
}

/** A log written event by event, as devices and server would. */
export function logOf() {
  const events: RunEvent[] = [];
  const iso = (seconds: number) => new Date(begin + seconds * 1000).toISOString();
  function log<Kind extends RunEventKind>(kind: Kind, payload: RunPayloads[Kind], given: Given): RunEvent {
    const { s, off = 0, delay = 0 } = given;
    const event = {
      sequence: events.length + 1,
      clientId: given.clientId ?? `event ${events.length + 1}`,
      kind,
      payload,
      at: iso(s + off),
      sentAt: given.says ? iso(s + off + delay) : null,
      receivedAt: iso(s + delay),
      actor: given.actor ?? null,
      device: given.device ?? 'phone',
    } as unknown as RunEvent;
    events.push(event);
    return event;
  }
  return { events, log };
}

const zone = (id: string, letter: string, contact: readonly [number, number | null, number | null]) =>
  ({
    id,
    letter,
    name: id,
    areaCm2: 100,
    etch: { name: 'gum', parts: [], ml: 5 },
    strength: 'light',
    contactSeconds: { low: contact[0], wanted: contact[1], high: contact[2] },
    longestGapSeconds: 30,
    layFrom: 0,
    layTo: 10,
    endsAt: 130,
    parts: [],
  }) as unknown as PlannedZone;

const steps: readonly ScheduleStep[] = [
  { person: 1, from: 0, to: 10, action: 'lay', zone: 'sky' },
  { person: 1, from: 10, to: 20, action: 'lay', zone: 'post' },
  { person: 1, from: 30, to: 33, action: 'move', zone: 'sky' },
  { person: 1, from: 33, to: 36, action: 'move', zone: 'post' },
  { person: 1, from: 110, to: 115, action: 'lift', zone: 'sky' },
  { person: 1, from: 125, to: 130, action: 'lift', zone: 'post' },
];

/** A kept plan of two zones, laid one after the other by one person. */
export function aPlan(): KeptPlan {
  const plan = {
    zones: [zone('sky', 'A', [90, 120, null]), zone('post', 'B', [90, 120, 150])],
    schedule: { feasible: true, steps },
  } as unknown as EtchPlan;
  const request = { table: { rows: [] }, tannic: null, filmMm: 0.5, people: 1 };
  return {
    id: 'plan',
    workId: 'work',
    plan,
    request,
    table: { name: 'Tannic', version: 1 },
  } as unknown as KeptPlan;
}
