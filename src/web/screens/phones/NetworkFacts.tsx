import type { NetworkState } from '../../../records/device.ts';
import { dayText } from '../../managers/localMoment.ts';
import { Notice } from '../../parts/Notice.tsx';

/** The addresses that phones may use, and what holds and what can't over them. */
export function NetworkFacts({ network: { addresses, certificate } }: { network: NetworkState }) {
  return (
    <section className="network-facts" aria-label="The network">
      <h2>{addresses.length === 1 ? 'The address for phones' : 'The addresses for phones'}</h2>
      <ul>
        {addresses.map(({ address }) => (
          <li key={address} className="let-in-address">
            {address}
          </li>
        ))}
      </ul>
      {certificate === null ? (
        <Notice
          kind="caution"
          title="These addresses are plain http: whoever shares this network can listen in."
        >
          Everything at the stone works, but a phone’s screen may go dark by itself, and Stonetone can’t be
          installed on the phone nor opened there while the network is gone. Start it with --certificate self
          to end the first two.
        </Notice>
      ) : (
        <>
          <h2>The certificate’s SHA-256 fingerprint</h2>
          <p className="fingerprint">{certificate.fingerprint}</p>
          <p className="soft">
            It holds until {dayText(certificate.until)}.{' '}
            {certificate.own &&
              'It was made on this machine, so a phone’s browser warns of it once: let it pass only where the browser shows this fingerprint. To install Stonetone on a phone, its certificate must be trusted there.'}
          </p>
        </>
      )}
    </section>
  );
}
