import type { PickedThing, Pull, PullDifference } from '../../records/pull.ts';
import type { RunEvent } from '../../records/run.ts';
import { pullPaper } from './pullPaper.ts';

/** What was logged at the stone between two pulls. */
export interface LogBetween {
  /** Whether the time between the two pulls is known and a log covers it: without one, nothing is taken for unchanged. */
  readonly covered: boolean;
  readonly events: readonly RunEvent[];
}

const order = { changed: 0, unknown: 1, unchanged: 2 } as const;

/**
 * What else changed from one pull to a later one: its own fields, and what was logged between them. First what changed,
 * then what is unknown, then what did not; within each, as likely to matter as the trade thinks (common practice, no
 * source).
 */
export function pullDifferences(earlier: Pull, later: Pull, log: LogBetween): readonly PullDifference[] {
  return [...ownDifferences(earlier, later), ...logDifferences(log)].sort(
    (a, b) => order[a.verdict] - order[b.verdict],
  );
}

function ownDifferences(earlier: Pull, later: Pull): PullDifference[] {
  const both = (what: string, of: (pull: Pull) => string | null) => difference(what, of(earlier), of(later));
  return [
    both('ink', ({ ink }) => pickedWords(ink)),
    both('charges', ({ charges }) => numberWords(charges)),
    both('passes', ({ passes }) => numberWords(passes)),
    both('pressure, eighths from contact', ({ pressureEighths }) => numberWords(pressureEighths)),
    both('packing', ({ packing }) => packing),
    both('paper', pullPaper),
    both('damp or dry', ({ damp }) => (damp === null ? null : damp ? 'damp' : 'dry')),
    both('roller', ({ roller }) => pickedWords(roller)),
    both('who', ({ who }) => who),
  ];
}

function difference(what: string, earlier: string | null, later: string | null): PullDifference {
  if (earlier === null || later === null) {
    const note = earlier === later ? 'not noted on either pull' : 'not noted on both pulls';
    return { what, earlier, later, verdict: 'unknown', note };
  }
  const same = earlier.trim().toLowerCase() === later.trim().toLowerCase();
  return { what, earlier, later, verdict: same ? 'unchanged' : 'changed', note: '' };
}

function pickedWords(picked: PickedThing | null): string | null {
  return picked?.words ?? null;
}

function numberWords(value: number | null): string | null {
  return value === null ? null : String(value);
}

const logged: readonly { readonly what: string; readonly wordsOf: (event: RunEvent) => string | null }[] = [
  {
    what: 'correction of the stone',
    wordsOf: (event) =>
      event.kind === 'correction'
        ? [event.payload.stage, event.payload.words].filter(Boolean).join(': ')
        : null,
  },
  {
    what: 'gum',
    wordsOf: (event) =>
      event.kind === 'gummed' ? 'gummed' : event.kind === 'gum-off' ? 'gum taken off' : null,
  },
  {
    what: 'new batch',
    wordsOf: (event) =>
      event.kind === 'picked' && event.payload.tool === 'batch' ? event.payload.words : null,
  },
  {
    what: 'picked at the press',
    wordsOf: (event) =>
      event.kind === 'picked' && event.payload.tool !== 'batch'
        ? `${event.payload.tool}: ${event.payload.words}`
        : null,
  },
  {
    what: 'stage of the line',
    wordsOf: (event) =>
      event.kind === 'stage-started' || event.kind === 'repeated' ? event.payload.stage : null,
  },
  { what: 'trouble', wordsOf: (event) => (event.kind === 'trouble' ? event.payload.words : null) },
];

function logDifferences({ covered, events }: LogBetween): PullDifference[] {
  return logged.map(({ what, wordsOf }) => {
    const words = events.flatMap((event) => wordsOf(event) ?? []);
    if (words.length > 0) {
      const later = words.join('; ');
      return { what, earlier: null, later, verdict: 'changed', note: 'logged between the two pulls' };
    }
    if (covered) {
      return {
        what,
        earlier: null,
        later: null,
        verdict: 'unchanged',
        note: 'nothing was logged between the two pulls',
      };
    }
    const note = 'no log covers the time between the two pulls';
    return { what, earlier: null, later: null, verdict: 'unknown', note };
  });
}
