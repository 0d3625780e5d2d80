import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RunEvent } from '../../src/records/run.ts';
import { aPlan } from '../../src/studio/bench/benchLog.testing.ts';
import { foldOf, foldRun, type LogReading, readFurther, readWhole } from '../../src/studio/bench/foldRun.ts';
import type { EtchesPlanned } from '../../src/studio/etch/contactRules.ts';
import { holds } from './holds.ts';

const begun = Date.UTC(2026, 2, 4, 9);

/** Whatever is tapped at a bench, most of it in order; some is sent late, by clocks that are off, or takes something back. */
const told = fc.record({
  what: fc.constantFrom(
    ['laid', { place: 'sky' }],
    ['laid', { place: 'post' }],
    ['laid', { place: 'reeds' }],
    ['moved', { place: 'sky' }],
    ['moved', { place: 'post' }],
    ['lifted', { place: 'sky' }],
    ['lifted', { place: 'post' }],
    ['buffed', { round: 2 }],
    ['trouble', { place: 'sky', words: 'it dries' }],
    ['stage-started', { stage: 'first-etch' }],
    ['stage-started', { stage: 'washout' }],
    ['stage-ended', { stage: 'washout' }],
    ['stage-started', { stage: 'second-etch' }],
    ['repeated', { stage: 'second-etch' }],
    ['skipped', { stage: 'trial-proofs' }],
    ['correction', { stage: 'hone' }],
    ['gummed', {}],
    ['gum-off', {}],
    ['picked', { tool: 'ink', words: 'soft' }],
    ['picked', { tool: 'roller', id: 'heron', words: 'Heron' }],
    ['remembered', { stage: 'washout', seconds: 90 }],
    ['remembered', { place: 'post', seconds: 100 }],
    ['poured', { material: 'gum', how: 'measured', amount: { value: 20, unit: 'ml' }, mark: 1 }],
    ['left', { done: [] }],
  ),
  undoes: fc.oneof({ weight: 20, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: fc.nat(30) }),
  seconds: fc.oneof(
    { weight: 40, arbitrary: fc.integer({ min: 1, max: 90 }) },
    { weight: 1, arbitrary: fc.integer({ min: -200, max: 0 }) },
  ),
  delayMs: fc.oneof(
    { weight: 40, arbitrary: fc.constantFrom(300, 300, 300, 310) },
    { weight: 1, arbitrary: fc.integer({ min: 0, max: 200_000 }) },
  ),
  device: fc.constantFrom('phone', 'phone', 'phone', 'laptop'),
  says: fc.boolean(),
});
type Told = typeof told extends fc.Arbitrary<infer Value> ? Value : never;

function logOf(all: readonly Told[]): readonly RunEvent[] {
  let at = begun;
  return all.map(({ what: [kind, payload], undoes, seconds, delayMs, device, says }, index) => {
    at += seconds * 1000;
    const off = device === 'laptop' ? 7_200_000 : 0;
    const iso = (ms: number) => new Date(ms).toISOString();
    return {
      sequence: index + 1,
      clientId: `tap ${index}`,
      kind: undoes === null ? kind : 'undo',
      payload: undoes === null ? payload : { clientId: `tap ${undoes}` },
      at: iso(at + off),
      sentAt: says ? iso(at + off) : null,
      receivedAt: iso(at + delayMs),
      actor: 'P.R.',
      device,
    } as unknown as RunEvent;
  });
}

const kept = aPlan();
const rules = { strength: 'light', name: 'gum', contactSeconds: { low: 60, wanted: 90, high: 120 } };
const seconds = [300, 40].map((second) => ({
  id: `second ${second}`,
  createdAt: new Date(begun + second * 1000).toISOString(),
  plan: { zones: [{ id: 'reeds', name: `reeds of ${second}`, strength: 'light' }] },
  table: { rows: [{ ...rules, moveWithinSeconds: 20 + second / 100 }] },
})) as unknown as EtchesPlanned['seconds'];
const planned = fc.constantFrom<EtchesPlanned | null>(
  null,
  { first: kept.plan, seconds: [] },
  { first: kept.plan, seconds },
  { first: null, seconds },
);

/** As it comes back from the disk. */
const fromDisk = (reading: LogReading) => JSON.parse(JSON.stringify(reading)) as LogReading;

let pieces = 0;
let resumed = 0;
holds(
  'a log read on from where it was kept amounts to the same, to the letter, as one that is read whole',
  fc.property(
    fc.array(told, { minLength: 1, maxLength: 40 }),
    fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 12 }),
    planned,
    (all, sizes, etches) => {
      const events = logOf(all);
      let reading = readWhole([], etches);
      for (let read = 0, turn = 0; read < events.length; turn++) {
        const next = read + sizes[turn % sizes.length]!;
        const before = JSON.stringify(reading);
        const further = readFurther(fromDisk(reading), events.slice(read, next), etches);
        expect(JSON.stringify(reading)).toBe(before);
        pieces += 1;
        if (further) resumed += 1;
        const whole = readWhole(events.slice(0, next), etches);
        reading = further ?? whole;
        expect(foldOf(reading, etches)).toEqual(foldRun(events.slice(0, next), etches));
        read = next;
      }
    },
  ),
  1500,
);

it('is read on from there most of the time, or nothing would be shown', () => {
  expect(resumed / pieces).toBeGreaterThan(0.4);
  expect(resumed / pieces).toBeLessThan(0.95);
});
