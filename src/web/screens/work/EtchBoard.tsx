import { useMemo } from 'react';
import { mapAreas } from '../../../paper/charts/etchMap/mapAreas.ts';
import type { KeptPlan } from '../../../records/keptPlan.ts';
import { say } from '../../words/say.ts';
import { StrengthBoard } from './StrengthBoard.tsx';
import type { WorkDesk } from './useWorkDesk.ts';

/** The stone with its etch map; with its bare zones as long as nothing is planned. */
export function EtchBoard({
  desk,
  kept,
  pointed,
}: {
  desk: WorkDesk;
  kept: KeptPlan | null;
  pointed: string | null;
}) {
  const areas = useMemo(() => kept && mapAreas(kept, false), [kept]);
  return (
    <StrengthBoard
      desk={desk}
      stone={kept?.request.stone ?? desk.work.stone}
      etch={say('the etch map')}
      areas={areas}
      pointed={pointed}
      {...(kept && {
        words: say('As seen on the stone; hatched by strength as on paper, the denser the stronger.'),
      })}
    />
  );
}
