import { expect, it } from 'vitest';
import { logOf } from '../../../studio/bench/benchLog.testing.ts';
import { eventWords } from './logWords.ts';
import { troubleUntold } from './troubleKinds.ts';

it('a trouble waits to be said what it was, and the log then shows it', () => {
  const { events, log } = logOf();
  expect(troubleUntold(events)).toBe(false);
  log('trouble', { place: null, words: 'trouble at the stone' }, { s: 1 });
  expect(troubleUntold(events)).toBe(true);
  expect(eventWords(events[0]!, String)).toBe('trouble at the stone');
  log('note', { about: 'trouble', words: 'etch ran over the edge: near the reeds' }, { s: 9 });
  expect(troubleUntold(events)).toBe(false);
  expect(eventWords(events[1]!, String)).toBe('the trouble was: etch ran over the edge: near the reeds');
  log('trouble', { place: null, words: 'trouble at the stone' }, { s: 20, clientId: 'again' });
  log('undo', { clientId: 'again' }, { s: 21 });
  expect(troubleUntold(events)).toBe(false);
  log('note', 7, { s: 22 });
  expect(eventWords(events.at(-1)!, String)).toBe('a note');
});
