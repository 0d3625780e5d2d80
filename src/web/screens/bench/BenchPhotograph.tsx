import { useQueryClient } from '@tanstack/react-query';
import type { PhotographState } from '../../../records/attachedPhotograph.ts';
import type { WorkStage } from '../../../records/work.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { say } from '../../words/say.ts';
import { PhotographTarget } from '../camera/PhotographTarget.tsx';
import { holdPhotograph } from '../held/heldPhotographs.ts';

/** What a photograph taken after each stage shows of the stone; the screen of photographs lets it be said otherwise. */
const shown: Readonly<Record<WorkStage, PhotographState>> = {
  grained: 'grained',
  drawn: 'drawn',
  'first-etch': 'other',
  'washed-out': 'washed-out',
  'rolled-up': 'inked',
  'trial-proofs': 'inked',
  'second-etch': 'other',
  proofs: 'inked',
  edition: 'inked',
  'closed-down': 'other',
  regrained: 'grained',
};

/** Photographs the stone at the bench: held here at once, sent and put to the work's photographs by itself. */
export function BenchPhotograph({ work }: { work: WorkEntry }) {
  const queries = useQueryClient();
  const sizeMm = work.rectangle?.sizeMm ?? ([work.stone.widthMm, work.stone.heightMm] as const);
  return (
    <PhotographTarget
      words={say('Photograph the stone')}
      className="bench-target"
      mark="bench-photograph"
      thing={{ name: work.stone.name, sizeMm, sizeOf: work.rectangle ? 'rectangle' : 'stone' }}
      onPhotograph={(file) => {
        const belongs = { to: 'work', workId: work.id, state: shown[work.stage] } as const;
        void holdPhotograph(queries, file, `${work.stone.name}, ${work.title}`, belongs);
      }}
    />
  );
}
