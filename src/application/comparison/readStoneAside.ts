import type { SideTone } from '../../imaging/tone/readSide.ts';
import type { SideInput } from '../../imaging/tone/sideInput.ts';
import { runInThread, threadModule } from '../threads/runInThread.ts';

/** The stone being read in a thread of its own. */
export interface StoneReading {
  /** What was read; null where the stone can't be read, undefined where the thread failed. */
  done(): Promise<SideTone | null | undefined>;
  stop(): void;
}

/** Reads the stone's tones while the print is being looked for on it: neither needs the other, and there are two cores. */
export function readStoneAside(input: SideInput): StoneReading {
  const thread = runInThread<never, SideTone | null>(threadModule(import.meta.url, 'stoneThread'), input);
  return {
    async done() {
      const end = await thread.end;
      return end.kind === 'answered' ? end.answer : undefined;
    },
    stop: () => void thread.terminate(),
  };
}
