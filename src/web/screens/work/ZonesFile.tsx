import { useState } from 'react';
import type { Zone } from '../../../records/zone.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { importZones, zonesAddress } from '../../client/works.ts';
import { type ListFileTrouble, readListFile } from '../../managers/listFile.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { FileLine } from '../../parts/FileLine.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';
import type { WorkDesk } from './useWorkDesk.ts';

/** zones.json in and out: millimetres from the top left of the work rectangle, or of the stone where there is none. */
export function ZonesFile({ desk }: { desk: WorkDesk }) {
  const { work, unsaved } = desk;
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ListFileTrouble | ShownFailure | null>(null);
  const take = async (file: File) => {
    const read = readListFile<Zone>(await file.text(), ['id', 'name', 'medium', 'polygonMm']);
    if (!read.ok) {
      setTrouble(read.error);
      return;
    }
    setBusy(true);
    setTrouble(null);
    try {
      desk.adopt(await importZones(work.id, work.version, read.value));
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setBusy(false);
    }
  };
  return (
    <Fold title={say('Zones as a file')}>
      <ul>
        <FileLine
          title={say('Take zones in')}
          advice={
            unsaved
              ? say('They replace what is drawn, saved or not; “Take back” brings it again.')
              : say('They replace the zones; “Take back” brings again what was drawn.')
          }
          held={null}
          accept=".json,application/json"
          busy={busy}
          trouble={trouble}
          onFile={(file) => void take(file)}
          onDrop={() => setTrouble(null)}
        />
      </ul>
      <ButtonFile href={zonesAddress(work.id)}>{say('Give the saved zones out')}</ButtonFile>
    </Fold>
  );
}
