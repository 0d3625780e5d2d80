import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { DeviceEntry } from '../../../records/device.ts';
import { devicesKey, shutOut } from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Fold } from '../../parts/Fold.tsx';
import { say } from '../../words/say.ts';

/** The phones that are let in, each to be shut out; behind a fold those that are no longer. */
export function DeviceLines({ devices }: { devices: readonly DeviceEntry[] }) {
  const inside = devices.filter(({ standing }) => standing === 'let-in');
  const outside = devices.filter(({ standing }) => standing !== 'let-in');
  return (
    <section className="device-lines" aria-label={say('Phones that were let in')}>
      {inside.length > 0 && (
        <ul>
          {inside.map((device) => (
            <DeviceLine key={device.id} device={device} />
          ))}
        </ul>
      )}
      {outside.length > 0 && (
        <Fold title={say('No longer let in: {count}', { count: outside.length })}>
          <ul>
            {outside.map((device) => (
              <li key={device.id}>
                <b>{device.name}</b>
                <span className="soft">
                  {device.shutOutAt === null
                    ? say('not heard of since {day}: after 30 days it needs a new code', {
                        day: dayWords(device.lastSeenAt),
                      })
                    : say('shut out {day}', { day: dayWords(device.shutOutAt) })}
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
        {say('let in {day}, last heard of {day2}', {
          day: dayWords(device.letInAt),
          day2: dayWords(device.lastSeenAt),
        })}
      </span>
      {asked ? (
        <span className="device-sure">
          <span>
            {say('What it has not sent yet waits on it, and can’t be sent until it has a new code.')}
          </span>
          <Button kind="danger" onClick={close}>
            {say('Shut {device} out for good', { device: device.name })}
          </Button>
          <Button onClick={() => setAsked(false)}>{say('Keep it')}</Button>
        </span>
      ) : (
        <Button onClick={() => setAsked(true)} aria-label={say('Shut out {device}', { device: device.name })}>
          {say('Shut out …')}
        </Button>
      )}
      {failed && <FailureNotice failure={failed} />}
    </li>
  );
}
