import { growthOf } from '../served/growth.ts';
import type { InsideSample } from '../served/processSample.ts';

/** How the served program stood at one moment of a soak. */
export interface Sample {
  readonly minutes: number;
  /** Resident memory of the whole process tree, bytes. */
  readonly memory: number;
  readonly inside: InsideSample;
  /** Files and sockets that it has open. */
  readonly open: number;
  readonly logBytes: number;
  readonly databaseBytes: number;
  /** Files and folders in the data folder. */
  readonly files: number;
  readonly errors: number;
  readonly taps: number;
}

const columns: readonly (readonly [string, (sample: Sample) => string])[] = [
  ['min', ({ minutes }) => minutes.toFixed(1)],
  ['memory MB', ({ memory }) => (memory / 1e6).toFixed(0)],
  ['heap MB', ({ inside }) => (inside.heapBytes / 1e6).toFixed(1)],
  ['beside MB', ({ inside }) => (inside.externalBytes / 1e6).toFixed(1)],
  ['handles', ({ inside }) => String(inside.handles)],
  ['open', ({ open }) => String(open)],
  ['loop p99 ms', ({ inside }) => inside.loop.p99.toFixed(1)],
  ['most ms', ({ inside }) => inside.loop.most.toFixed(0)],
  ['log MB', ({ logBytes }) => (logBytes / 1e6).toFixed(1)],
  ['database MB', ({ databaseBytes }) => (databaseBytes / 1e6).toFixed(1)],
  ['files', ({ files }) => String(files)],
  ['taps', ({ taps }) => String(taps)],
  ['errors', ({ errors }) => String(errors)],
];

/** One line of the table; its head for null. */
export function tellSample(sample: Sample | null): string {
  return columns.map(([name, of]) => (sample === null ? name : of(sample)).padStart(name.length)).join('  ');
}

interface Watched {
  readonly name: string;
  readonly of: (sample: Sample) => number;
  /** By the hour: less is no growth that a studio would meet in a day. */
  readonly allowed: number;
  readonly unit: string;
}

/** The heap holds what the newest logs amount to, which a room's day adds to; a day at this pace is eight minutes. */
const watched: readonly Watched[] = [
  { name: 'memory of the process tree', of: ({ memory }) => memory / 1e6, allowed: 60, unit: 'MB' },
  { name: 'heap after collection', of: ({ inside }) => inside.heapBytes / 1e6, allowed: 20, unit: 'MB' },
  {
    name: 'buffers beside the heap',
    of: ({ inside }) => inside.externalBytes / 1e6,
    allowed: 20,
    unit: 'MB',
  },
  { name: 'handles', of: ({ inside }) => inside.handles, allowed: 3, unit: '' },
  { name: 'open files and sockets', of: ({ open }) => open, allowed: 3, unit: '' },
  { name: 'write-ahead log', of: ({ logBytes }) => logBytes / 1e6, allowed: 5, unit: 'MB' },
];

/** Says what grew over the last half. @returns whether anything certainly did, by more than is allowed */
export function tellVerdict(samples: readonly Sample[]): boolean {
  let anyGrew = false;
  for (const { name, of, allowed, unit } of watched) {
    const most = Math.max(...samples.map(of));
    const growth = growthOf(samples.map((sample) => ({ minutes: sample.minutes, value: of(sample) })));
    const shown = (value: number) => value.toFixed(1);
    if (growth === null) {
      console.log(`${name}: at most ${shown(most)} ${unit}; too short a watch to say whether it grows`);
      continue;
    }
    const { perHour, low, high } = growth;
    const grew = low > 0 && perHour > allowed;
    anyGrew ||= grew;
    const judged = grew ? 'GROWS' : high <= allowed ? 'does not grow' : 'can’t tell';
    console.log(
      `${name}: at most ${shown(most)} ${unit}; ${shown(perHour)} (${shown(low)} to ${shown(high)}) ${unit} an hour over the last half: ${judged}`,
    );
  }
  return anyGrew;
}
