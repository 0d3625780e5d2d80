import { useEffect, useRef, useState } from 'react';
import { BenchCaller } from '../../managers/bench/benchCaller.ts';
import type { BenchSenses } from '../../managers/bench/benchSenses.ts';
import type { BenchView } from '../../managers/bench/benchView.ts';
import type { StageView } from '../../managers/bench/stageView.ts';
import { told } from '../../words/told.ts';

/**
 * Calls what the screen says whenever it says something else.
 * @param warnings what must be heard to its end, oldest first; null as long as the log is not read. Each new one is said
 *   before what is to be done.
 */
export function useBenchCalls(
  etch: BenchView | null,
  stage: StageView | null,
  senses: BenchSenses,
  warnings: readonly string[] | null,
): { readonly wake: () => void } {
  const [caller] = useState(() => new BenchCaller());
  const now = useRef(senses);
  now.current = senses;
  const words = etch ? spokenWords(etch) : (stage?.spoken ?? null);
  const heard = useRef<number | null>(null);
  const count = warnings?.length ?? null;
  const warning = warnings?.at(-1) ?? null;
  useEffect(() => {
    // what the log told before this page was opened is on the screen, not news
    if (count !== null && heard.current !== null && count > heard.current && warning !== null)
      caller.warn(told(warning), now.current);
    heard.current = count ?? heard.current;
    if (words !== null) caller.call(words, now.current);
  }, [words, caller, count, warning]);
  useEffect(() => {
    if (!senses.voice) caller.silence();
  }, [senses.voice, caller]);
  useEffect(() => () => caller.silence(), [caller]);
  return { wake: () => caller.wake() };
}

/** The rhythm: the letter first, then the same words as on screen. What is only to come is left unsaid. */
function spokenWords({ phase, counting, letter, words, stayOff }: BenchView): string | null {
  if (phase === 'etching' && counting === 'until') return null;
  return [phase === 'buffing' ? null : letter, words, stayOff].filter((each) => each !== null).join('. ');
}
