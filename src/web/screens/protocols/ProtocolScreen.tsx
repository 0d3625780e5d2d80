import '../entries/Entries.css';
import './Protocols.css';
import { useQuery } from '@tanstack/react-query';
import { Link, useSearchParams } from 'wouter';
import type { ForeignProtocol } from '../../../records/workProtocol.ts';
import {
  openProtocol,
  protocolKey,
  protocolSheetAddress,
  protocolsKey,
  putProtocolBy,
} from '../../client/protocols.ts';
import { listWorks, worksKey } from '../../client/workList.ts';
import { ButtonFile } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { dayWords } from '../../parts/entryWords.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { KeptEntry } from '../entries/KeptEntry.tsx';
import { OpenEntry } from '../entries/OpenEntry.tsx';
import { useKeepEntry } from '../entries/useKeepEntry.ts';
import { ProtocolBeside } from './ProtocolBeside.tsx';
import { ProtocolTold } from './ProtocolTold.tsx';

/** One protocol of another studio, by itself or beside a work of this one. */
export default function ProtocolScreen({ id }: { id: string }) {
  return (
    <OpenEntry
      name="protocol"
      list={{ href: '/protocols', stamp: say('Protocols of other studios'), words: say('To the protocols') }}
      entryKey={protocolKey(id)}
      open={() => openProtocol(id)}
    >
      {(kept) => <ProtocolPage kept={kept} />}
    </OpenEntry>
  );
}

/** How many works are offered; a longer choice is over HTTP. */
const offered = 100;

function ProtocolPage({ kept }: { kept: ForeignProtocol }) {
  const keep = useKeepEntry<ForeignProtocol>(protocolKey, protocolsKey);
  const [asked, setAsked] = useSearchParams();
  const beside = asked.get('beside') ?? '';
  const works = useQuery({
    queryKey: [...worksKey, 'for protocols'],
    queryFn: ({ signal }) => listWorks({ search: '', putBy: 'all', stage: null }, null, signal, offered),
  });
  const { protocol } = kept;
  const options = [
    ['', say('by itself')] as const,
    ...(works.data?.works ?? []).map(
      ({ id, title, stoneName }) => [id, say('{title}, on {stoneName}', { title, stoneName })] as const,
    ),
  ];
  return (
    <>
      <PageHead
        stamp={sayRich('<link>Protocols of other studios</link> · written {day}', {
          link: (words) => <Link href="/protocols">{words}</Link>,
          day: dayWords(protocol.madeAt),
        })}
        headline={protocol.title}
      >
        <ButtonFile href={protocolSheetAddress(kept.id)}>{say('As a PDF')}</ButtonFile>
      </PageHead>
      <div className="protocol-page">
        <div className="protocol-choice">
          <Choice
            label={say('Beside a work of yours')}
            value={beside}
            options={options}
            onChoose={(id) => setAsked(id === '' ? {} : { beside: id }, { replace: true })}
          />
        </div>
        {beside === '' ? (
          <ProtocolTold protocol={protocol} />
        ) : (
          <ProtocolBeside key={beside} theirs={protocol} workId={beside} />
        )}
        <KeptEntry
          entry={kept}
          listHref="/protocols"
          words={{ out: say('Put the protocol by'), back: say('Bring it back') }}
          keep={keep}
          setPutBy={(putBy) => putProtocolBy(kept.id, kept.version, putBy)}
        >
          {() => null}
        </KeptEntry>
      </div>
    </>
  );
}
