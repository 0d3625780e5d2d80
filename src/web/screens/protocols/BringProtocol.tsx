import '../entries/Entries.css';
import './Protocols.css';
import { type DragEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { ForeignProtocol } from '../../../records/workProtocol.ts';
import { bringProtocol, protocolKey, protocolsKey } from '../../client/protocols.ts';
import { shownFailure } from '../../client/shownFailure.ts';
import { type ProtocolFileTrouble, readProtocolFile } from '../../managers/papers/protocolFile.ts';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { useKeepEntry } from '../entries/useKeepEntry.ts';

/** Brings the protocol of another studio in, from its file. */
export default function BringProtocol() {
  const [, go] = useLocation();
  const keep = useKeepEntry<ForeignProtocol>(protocolKey, protocolsKey);
  const [over, setOver] = useState(false);
  const [taking, setTaking] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<ProtocolFileTrouble | null>(null);
  const take = async (file: File | undefined) => {
    if (!file || taking !== null) return;
    setTrouble(null);
    setTaking(file.name);
    try {
      const read = readProtocolFile(await file.text());
      if (!read.ok) {
        setTrouble(read.error);
        return;
      }
      const kept = await bringProtocol(read.value);
      keep(kept);
      go(`/protocols/${kept.id}`);
    } catch (thrown) {
      setTrouble(shownFailure(thrown));
    } finally {
      setTaking(null);
    }
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    void take(event.dataTransfer.files[0]);
  };
  return (
    <>
      <PageHead
        stamp={<Link href="/protocols">{say('Protocols of other studios')}</Link>}
        headline={say('Bring a protocol in')}
      />
      <div className="entry-body">
        <p>
          {say(
            'It is the file protocol.json that another Stonetone gives out on a work’s page. It is kept as it came; nothing of yours changes.',
          )}
        </p>
        <section
          aria-label={say('The file')}
          className={`protocol-drop${over ? ' over' : ''}`}
          onDragOver={(event) => {
            event.preventDefault();
            setOver(true);
          }}
          onDragLeave={() => setOver(false)}
          onDrop={drop}
        >
          <p className="with-keys">{over ? say('Let go') : say('Lay the file here, or')}</p>
          <label className="button act">
            {taking === null ? say('Choose the file') : say('Reading it …')}
            <input
              className="unseen"
              type="file"
              accept=".json,application/json"
              disabled={taking !== null}
              aria-label={say('Choose the file')}
              onChange={(event) => {
                void take(event.target.files?.[0]);
                event.target.value = '';
              }}
            />
          </label>
        </section>
        <p role="status" className="unseen">
          {taking === null ? '' : say('Reading {taking} …', { taking })}
        </p>
        {trouble && (
          <div className="protocol-trouble">
            <FailureNotice failure={trouble} />
          </div>
        )}
      </div>
    </>
  );
}
