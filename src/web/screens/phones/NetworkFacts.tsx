import type { NetworkState } from '../../../records/device.ts';
import { dayText } from '../../managers/localMoment.ts';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';

/** The addresses that phones may use, and what holds and what can't over them. */
export function NetworkFacts({ network: { addresses, certificate } }: { network: NetworkState }) {
  return (
    <section className="network-facts" aria-label={say('The network')}>
      <h2>
        {say('{count, plural, one {The address for phones} other {The addresses for phones}}', {
          count: addresses.length,
        })}
      </h2>
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
          title={say('These addresses are plain http: whoever shares this network can listen in.')}
        >
          {say(
            'Everything at the stone works, but a phone’s screen may go dark by itself, and Stonetone can’t be installed on the phone nor opened there while the network is gone. Start it with --certificate self to end the first two.',
          )}
        </Notice>
      ) : (
        <>
          <h2>{say('The certificate’s fingerprint (SHA-256)')}</h2>
          <p className="fingerprint">{certificate.fingerprint}</p>
          <p className="soft">
            {say('It holds until {day}. {own}', {
              day: dayText(certificate.until),
              own:
                certificate.own &&
                say(
                  'It was made on this machine, so a phone’s browser warns of it once. Touch what the browser says of the certificate there and hold its SHA-256 line beside this one: only where both are the same, let it pass. To install Stonetone on a phone, its certificate must be trusted there.',
                ),
            })}
          </p>
        </>
      )}
    </section>
  );
}
