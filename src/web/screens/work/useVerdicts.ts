import { useMemo } from 'react';
import type { KeptStone } from '../../../records/stoneEntry.ts';
import type { WorkVerdicts } from '../../../records/workEntry.ts';
import { workVerdicts } from '../../../studio/stones/workVerdicts.ts';
import { faultOf, faultWords } from '../../managers/outlineFaults.ts';
import type { Drawing } from '../../managers/zoneDrawing.ts';
import { useQuiet } from './useQuiet.ts';

/** What follows from the zones as they are drawn now, before anything is saved. */
export interface LiveVerdicts extends WorkVerdicts {
  /** Zones whose outline can't be saved; they count nowhere else. */
  readonly faulty: ReadonlySet<string>;
  readonly faults: readonly string[];
}

/** Judges the drawing by the same rules as the server, behind the hand that draws. */
export function useVerdicts(drawing: Drawing, stone: KeptStone): LiveVerdicts {
  const settled = useQuiet(drawing);
  return useMemo(() => {
    const { zones, rectangle, head } = settled;
    const sound = zones.filter(({ polygonMm }) => faultOf(polygonMm) === null);
    const faulty = new Set(zones.filter((zone) => !sound.includes(zone)).map(({ id }) => id));
    return {
      ...workVerdicts({ zones: sound, rectangle, head }, stone),
      faulty,
      faults: faultWords(zones),
    };
  }, [settled, stone]);
}
