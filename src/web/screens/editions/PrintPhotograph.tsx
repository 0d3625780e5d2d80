import { useQueryClient } from '@tanstack/react-query';
import { deviceName } from '../../managers/bench/clientIds.ts';
import { pictureKinds } from '../../parts/PictureButton.tsx';
import { say } from '../../words/say.ts';
import { holdPhotograph } from '../held/heldPhotographs.ts';

/**
 * Takes a photograph of a print: this browser holds it at once, and it is sent and logged by itself, now or once the
 * server answers. Printing never waits for it.
 * @param className `bench-target` at the press.
 */
export function PrintPhotograph({
  editionId,
  impression,
  n,
  actor,
  ageMinutes,
  className,
}: {
  editionId: string;
  /** Client id of the print's entry in the ledger. */
  impression: string;
  /** The print's number at the press. */
  n: number;
  /** Whose hands take it; null where nobody said. */
  actor: string | null;
  /** How long after pulling it is taken, where that is typed; null: the moment tells. */
  ageMinutes: number | null;
  className: string;
}) {
  const queries = useQueryClient();
  const take = (file: File) =>
    holdPhotograph(queries, file, say('print {n}', { n }), {
      to: 'impression',
      editionId,
      impression,
      actor,
      device: deviceName(localStorage),
      ageMinutes,
    });
  return (
    <label className={`${className} print-photograph`}>
      {say('Photograph print {n}', { n })}
      <input
        className="unseen"
        type="file"
        accept={pictureKinds}
        capture="environment"
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) void take(file);
          event.target.value = '';
        }}
      />
    </label>
  );
}
