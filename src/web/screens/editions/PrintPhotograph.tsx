import { useQueryClient } from '@tanstack/react-query';
import { deviceName } from '../../managers/bench/clientIds.ts';
import { say } from '../../words/say.ts';
import { PhotographTarget } from '../camera/PhotographTarget.tsx';
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
    <PhotographTarget
      words={say('Photograph print {n}', { n })}
      className={className}
      mark="print-photograph"
      thing={{ name: say('print {n}', { n }), sizeMm: null, sizeOf: 'sheet' }}
      onPhotograph={(file) => void take(file)}
    />
  );
}
