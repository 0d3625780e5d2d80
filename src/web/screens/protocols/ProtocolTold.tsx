import type { WorkProtocol } from '../../../records/workProtocol.ts';
import { notRecorded } from '../../../studio/papers/paperWords.ts';
import { protocolParts } from '../../managers/papers/protocolLines.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** A protocol by itself, in the order of the work. */
export function ProtocolTold({ protocol }: { protocol: WorkProtocol }) {
  return (
    <div className="protocol-told">
      {protocolParts(protocol).map(({ name, absent, lines }) => (
        <section key={name}>
          <h2 className="big">{name}</h2>
          {lines.length === 0 ? (
            <p className="soft">{absent}</p>
          ) : (
            <dl className="protocol-lines">
              {lines.map(({ key, label, value }) => (
                <div key={key}>
                  <dt>{label}</dt>
                  <dd className={value === null ? 'soft' : undefined}>{value ?? notRecorded}</dd>
                </div>
              ))}
            </dl>
          )}
        </section>
      ))}
      <WordList
        name={say('What differed from the plan')}
        items={protocol.deviations}
        none={say('nothing was told')}
      />
      <WordList
        name={say('What was not recorded')}
        items={protocol.notRecorded}
        none={say('nothing is missing that a protocol asks for')}
      />
    </div>
  );
}

function WordList({ name, items, none }: { name: string; items: readonly string[]; none: string }) {
  return (
    <section>
      <h2 className="big">{name}</h2>
      {items.length === 0 ? (
        <p className="soft">{none}</p>
      ) : (
        <ul className="protocol-list">
          {items.map((item) => (
            <li key={item}>{told(item)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
