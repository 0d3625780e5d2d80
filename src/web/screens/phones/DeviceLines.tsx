import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { DeviceEntry } from '../../../records/device.ts';
import { devicesKey, shutOut } from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';

/** The phones that are let in, each to be shut out; behind a fold those that are no longer. */
export function DeviceLines({ devices }: { devices: readonly DeviceEntry[] }) {
  const inside = devices.filter(({ standing }) => standing === 'let-in');
  const outside = devices.filter(({ standing }) => standing !== 'let-in');
  return (
    <section className="device-lines" aria-label="Phones that were let in">
      {inside.length > 0 && (
        <ul>
          {inside.map((device) => (
            <DeviceLine key={device.id} device={device} />
          ))}
        </ul>
      )}
      {outside.length > 0 && (
        <Fold title={`No longer let in: ${outside.length}`}>
          <ul>
            {outside.map((device) => (
              <li key={device.id}>
                <b>{device.name}</b>
                <span className="soft">
                  {device.revokedAt === null
                    ? `not seen since ${dayWords(device.lastSeenAt)}: after 30 days it needs a new code`
                    : `shut out ${dayWords(device.revokedAt)}`}
                </span>
              </li>
            ))}
          </ul>
        </Fold>
      )}
    </section>
  );
}

function DeviceLine({ device }: { device: DeviceEntry }) {
  const queries = useQueryClient();
  const [asked, setAsked] = useState(false);
  const [failed, setFailed] = useState<ShownFailure | null>(null);
  const close = async () => {
    try {
      await shutOut(device.id);
      await queries.invalidateQueries({ queryKey: devicesKey });
    } catch (thrown) {
      setFailed(shownFailure(thrown));
    }
  };
  return (
    <li>
      <b>{device.name}</b>
      <span className="soft">
        let in {dayWords(device.pairedAt)}, last seen {dayWords(device.lastSeenAt)}
      </span>
      {asked ? (
        <span className="device-sure">
          <span>What it has not sent yet waits on it, and can’t be sent until it has a new code.</span>
          <Button kind="danger" onClick={close}>
            Shut {device.name} out for good
          </Button>
          <Button onClick={() => setAsked(false)}>Keep it</Button>
        </span>
      ) : (
        <Button onClick={() => setAsked(true)} aria-label={`Shut out ${device.name}`}>
          Shut out …
        </Button>
      )}
      {failed && <FailureNotice failure={failed} />}
    </li>
  );
}
