import './Phones.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { DeviceEntry, NetworkState } from '../../../records/device.ts';
import { askNetwork, devicesKey, listDevices, networkKey } from '../../client/devices.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyPage } from '../../parts/EmptyPage.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { DeviceLines } from './DeviceLines.tsx';
import { LetIn } from './LetIn.tsx';
import { NetworkFacts } from './NetworkFacts.tsx';
import { ThisDevice } from './ThisDevice.tsx';
import { useCaller } from './useCaller.ts';

/** Phones and tablets: on this machine who is let in and how; on a phone, what that phone itself is. */
export default function PhonesScreen() {
  const { caller } = useCaller();
  if (caller?.device) return <ThisDevice device={caller.device} />;
  return <Phones />;
}

function Phones() {
  const network = useQuery({ queryKey: networkKey, queryFn: askNetwork, refetchInterval: 5000 });
  const devices = useQuery({ queryKey: devicesKey, queryFn: listDevices, refetchInterval: 5000 });
  const failed = network.error ?? devices.error;
  if (failed && !(network.data && devices.data)) {
    return (
      <>
        <PageHead stamp={say('Phones and tablets')} headline={say('Who is let in could not be read')} />
        <div className="list-foot">
          <FailureNotice failure={shownFailure(failed)} />
        </div>
      </>
    );
  }
  if (!network.data || !devices.data) return <p className="unseen">{say('Opening …')}</p>;
  return (
    <>
      <PageHead stamp={say('Phones and tablets')} headline={headline(network.data, devices.data)} />
      <div className="phones-screen">
        <p className="phones-purpose">
          {network.data.addresses.length > 0
            ? say(
                'A phone or tablet beside the stone shows the bench, takes its taps and photographs the stone. Have it on the network of this room, press, and take the square with its camera.',
              )
            : say(
                'A phone or tablet beside the stone shows the bench, takes its taps and photographs the stone; none can do so yet.',
              )}
        </p>
        {network.data.addresses.length > 0 ? <LetIn /> : <Unreachable open={network.data.open} />}
        {devices.data.length > 0 && <DeviceLines devices={devices.data} />}
        {network.data.addresses.length > 0 && <NetworkFacts network={network.data} />}
      </div>
    </>
  );
}

function headline({ addresses }: NetworkState, devices: readonly DeviceEntry[]): string {
  if (addresses.length === 0) return say('No phone can reach this machine');
  const inside = devices.filter(({ standing }) => standing === 'let-in').length;
  if (inside === 0) return say('No phone is let in yet');
  return say('{inside, plural, one {One phone is let in} other {{inside} phones are let in}}', { inside });
}

/** Starts Stonetone so that it answers phones too. */
const startLine = 'npm start -- --lan --certificate self';

/** Takes the line along to where it is typed. */
function CopyLine() {
  const [copied, setCopied] = useState<boolean | null>(null);
  const copy = () =>
    navigator.clipboard.writeText(startLine).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  return (
    <>
      <Button kind="act" onClick={() => void copy()}>
        {say('Copy the line')}
      </Button>
      <p role="status">
        {copied === true && say('Copied: put it in where Stonetone was started.')}
        {copied === false && say('This browser does not let it be copied: type it as it stands.')}
      </p>
    </>
  );
}

function Unreachable({ open }: { open: boolean }) {
  if (open) {
    return (
      <EmptyPage title={say('This machine is on no network.')} act={null}>
        <p>
          {say('Have it join the network of the room. This page shows the address as soon as there is one.')}
        </p>
      </EmptyPage>
    );
  }
  return (
    <EmptyPage title={say('Stonetone answers this machine alone.')} act={<CopyLine />}>
      <p>
        {say(
          'To use a phone at the stone, ask whoever looks after this machine to stop Stonetone and start it again with this line:',
        )}
      </p>
      <p className="phones-command">
        <code>{startLine}</code>
      </p>
      <p>
        {say('Then open this page again: it shows the address for the phone and the code that lets it in.')}
      </p>
    </EmptyPage>
  );
}
