import './PrintsBeingRead.css';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { MeasuringStage } from '../../../records/comparisonEntry.ts';
import type { PrintReading, TestStoneReading } from '../../../records/patchReading.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { stopReading, testStoneKey } from '../../client/testStones.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { HowFar } from '../../parts/HowFar.tsx';
import { say } from '../../words/say.ts';

/** What is being done with a print of a test stone. */
const stepWords: Readonly<Record<MeasuringStage, string>> = {
  reading: say('Opening both photographs'),
  matching: say('Laying the print onto the stone'),
  light: say('Finding the bare ground and the light'),
  tones: say('Reading the patches on the print'),
  maps: say('Finding what changed'),
  sheets: say('Keeping what was read'),
};

/** The prints that are being read or wait for it, how far each has come, and the way to stop it. */
export function PrintsBeingRead({ reading }: { reading: TestStoneReading }) {
  const queries = useQueryClient();
  const stop = useMutation({
    mutationFn: () => stopReading(reading.testStone),
    onSuccess: () => queries.invalidateQueries({ queryKey: testStoneKey(reading.testStone) }),
  });
  const running = reading.prints.filter(({ state }) => state === 'waiting' || state === 'measuring');
  if (running.length === 0) return null;
  return (
    <section className="prints-being-read" aria-label={say('What is being read')}>
      <ul>
        {running.map((print) => (
          <li key={print.print}>
            <b>{print.name}</b>
            {print.state === 'measuring' && (
              <HowFar
                share={print.progress?.fraction ?? 0}
                label={say('How far the reading of {print} is', { print: print.name })}
              />
            )}
            <span>{stepOf(print)}</span>
          </li>
        ))}
      </ul>
      <p className="unseen" role="status">
        {running.map((print) => `${print.name}: ${stepOf(print)}.`).join(' ')}
      </p>
      <p className="soft">
        {say('You may leave this page; it goes on. Stonetone reads one print at a time.')}
      </p>
      {stop.isError && <FailureNotice failure={shownFailure(stop.error)} />}
      <Button onClick={() => stop.mutate()} disabled={stop.isPending}>
        {stop.isPending ? say('Stopping …') : say('Stop reading')}
      </Button>
    </section>
  );
}

function stepOf({ state, progress }: PrintReading): string {
  if (state === 'waiting') return say('Waiting for its turn');
  return progress ? stepWords[progress.stage] : say('Being opened');
}
