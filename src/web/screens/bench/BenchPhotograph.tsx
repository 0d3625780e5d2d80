import { useQueryClient } from '@tanstack/react-query';
import type { PhotographState } from '../../../records/attachedPhotograph.ts';
import type { WorkStage } from '../../../records/work.ts';
import type { WorkEntry } from '../../../records/workEntry.ts';
import { pictureKinds } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
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
  return (
    <label className="bench-target bench-photograph">
      {say('Photograph the stone')}
      <input
        className="unseen"
        type="file"
        accept={pictureKinds}
        capture="environment"
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) {
            const belongs = { to: 'work', workId: work.id, state: shown[work.stage] } as const;
            void holdPhotograph(queries, file, `${work.stone.name}, ${work.title}`, belongs);
          }
          event.target.value = '';
        }}
      />
    </label>
  );
}
