import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { Caller, Device } from '../../../records/device.ts';
import { callerKey, shutOut } from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { keepCaller } from '../../managers/phones/letInHere.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { NameDevice } from './NameDevice.tsx';

/** On a phone that is let in: its name, what can't be done on it, and leaving. */
export function ThisDevice({ device }: { device: Pick<Device, 'id' | 'name'> }) {
  const queries = useQueryClient();
  const [asked, setAsked] = useState(false);
  const [failed, setFailed] = useState<ShownFailure | null>(null);
  const tell = (caller: Caller) => {
    keepCaller(localStorage, caller);
    queries.setQueryData(callerKey, caller);
  };
  const leave = async () => {
    try {
      await shutOut(device.id);
      tell({ kind: 'stranger', device: null });
      // nothing of the room stays in the page's memory
      queries.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== callerKey[0] });
    } catch (thrown) {
      setFailed(shownFailure(thrown));
    }
  };
  return (
    <>
      <PageHead
        stamp={say('Phones and tablets')}
        headline={say('This is {device}', { device: device.name })}
      />
      <div className="phones-screen">
        <p>
          {say(
            'Whatever happens at stone, press and proofs is logged and photographed here, and everything can be looked at. Tables, media, people and hours, papers, copies and who is let in are kept on the machine that runs Stonetone.',
          )}
        </p>
        {!isSecureContext && (
          <Notice kind="caution" title={say('This address is plain http.')}>
            {say(
              'The screen may go dark by itself while an etch lies: set the phone’s own screen time longer. Stonetone can’t be installed here, nor opened while the network is gone; a page that is open goes on logging.',
            )}
          </Notice>
        )}
        <NameDevice
          key={device.name}
          device={device}
          act={say('Save the name')}
          onNamed={(named) => tell({ kind: 'device', device: named })}
        />
        {failed && <FailureNotice failure={failed} />}
        {asked ? (
          <div className="device-sure">
            <span>{say('What is not sent yet waits here until this phone is let in again.')}</span>
            <Button kind="danger" onClick={leave}>
              {say('Take {device} out', { device: device.name })}
            </Button>
            <Button onClick={() => setAsked(false)}>{say('Stay')}</Button>
          </div>
        ) : (
          <div>
            <Button onClick={() => setAsked(true)}>{say('Take this phone out …')}</Button>
          </div>
        )}
      </div>
    </>
  );
}
