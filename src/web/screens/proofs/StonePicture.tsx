import { useQuery } from '@tanstack/react-query';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { openPhotograph } from '../../client/photographs.ts';
import { frameCorners } from '../../managers/proofs/frameCorners.ts';
import { workAspect } from '../../managers/proofs/workFrame.ts';
import { StraightenedPhotograph } from '../../parts/StraightenedPhotograph.tsx';
import { say } from '../../words/say.ts';
import { stonePicture } from './stonePhotograph.ts';

/** The drawn or the inked stone, cut to what is measured; nothing where it has no photograph with marks. */
export function StonePicture({
  work,
  state,
  longestPx,
}: {
  work: WorkEntry;
  state: 'drawn' | 'inked';
  longestPx: number;
}) {
  const attached = stonePicture(work, state);
  const corners = attached && frameCorners(attached.corners, work);
  const found = useQuery({
    queryKey: ['photograph', attached?.photograph],
    queryFn: () => openPhotograph(attached!.photograph),
    enabled: attached !== null,
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (!found.data || !corners) return null;
  return (
    <StraightenedPhotograph
      photograph={found.data}
      corners={corners}
      aspect={workAspect(work)}
      longestPx={longestPx}
      label={state === 'drawn' ? say('Drawn stone') : say('Inked stone')}
    />
  );
}
