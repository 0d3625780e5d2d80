import { useEffect, useRef, useState } from 'react';
import { BenchCaller } from '../../managers/bench/benchCaller.ts';
import type { BenchSenses } from '../../managers/bench/benchSenses.ts';
import type { BenchView } from '../../managers/bench/benchView.ts';
import type { StageView } from '../../managers/bench/stageView.ts';

/** Calls what the screen says whenever it says something else. */
export function useBenchCalls(
  etch: BenchView | null,
  stage: StageView | null,
  senses: BenchSenses,
): { readonly wake: () => void } {
  const [caller] = useState(() => new BenchCaller());
  const now = useRef(senses);
  now.current = senses;
  const words = etch ? spokenWords(etch) : (stage?.spoken ?? null);
  useEffect(() => {
    if (words !== null) caller.call(words, now.current);
  }, [words, caller]);
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
