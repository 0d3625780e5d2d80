import './Phones.css';
import { useQuery } from '@tanstack/react-query';
import type { DeviceEntry, NetworkState } from '../../../records/device.ts';
import { askNetwork, devicesKey, listDevices, networkKey } from '../../client/devices.ts';
import { shownFailure } from '../../client/shownFailure.ts';
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
    <EmptyPage title={say('Stonetone answers this machine alone.')} act={null}>
      <p>
        {say(
          'To use a phone at the stone, ask whoever looks after this machine to stop Stonetone and start it again with this line:',
        )}
      </p>
      <p className="phones-command">
        <code>npm start -- --lan --certificate self</code>
      </p>
      <p>
        {say('Then open this page again: it shows the address for the phone and the code that lets it in.')}
      </p>
    </EmptyPage>
  );
}
