import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { fetchExport, sealedStones, sealedStonesKey } from '../../client/exports.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';

/** Hands a file that is here to the browser's own downloads. */
function handOver(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // a browser may read it a moment later
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Every record as CSV and JSON, for whoever wants to count or draw in another program. */
export function TakeRecordsOut() {
  const [packing, setPacking] = useState(false);
  const [trouble, setTrouble] = useState<ShownFailure | null>(null);
  const sealed = useQuery({ queryKey: sealedStonesKey, queryFn: ({ signal }) => sealedStones(signal) });
  const take = async () => {
    setPacking(true);
    setTrouble(null);
    try {
      handOver(await fetchExport(), 'stonetone-export.zip');
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setPacking(false);
    }
  };
  return (
    <section className="keeping-part" aria-labelledby="export-head">
      <h2 id="export-head" className="big">
        {say('The records as tables')}
      </h2>
      <p>
        {say(
          'Everything that was typed, logged and measured, of one moment: a table (CSV) and a list (JSON) of each kind, in one file (ZIP). Photographs are no part of it; a copy holds those.',
        )}
      </p>
      {sealed.data && sealed.data.length > 0 && (
        <p>
          {say(
            '{count, plural, one {One test stone is sealed still: {names}. The tables say what its patches got.} other {{count} test stones are sealed still: {names}. The tables say what their patches got.}} Whoever reads them by eye leaves the tables alone until then.',
            { count: sealed.data.length, names: sealed.data.join(', ') },
          )}
        </p>
      )}
      {trouble && <FailureNotice failure={trouble} />}
      <p className="keeping-acts">
        <Button disabled={packing} onClick={() => void take()}>
          {packing ? say('Packing …') : say('Take the records out')}
        </Button>
        <Link href="/keeping/columns">{say('What each column means')}</Link>
      </p>
      <p role="status" className="unseen">
        {packing ? say('Packing the records; a year takes some seconds.') : ''}
      </p>
    </section>
  );
}
