import './Phones.css';
import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { navigate } from 'wouter/use-browser-location';
import type { Caller } from '../../../records/device.ts';
import { callerKey, joinWith } from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { photographShelf } from '../../managers/held/photographShelf.ts';
import { unsentLogs } from '../../managers/held/tapShelf.ts';
import { codeInHash } from '../../managers/phones/codeInHash.ts';
import { keepCaller } from '../../managers/phones/letInHere.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { NameDevice } from './NameDevice.tsx';

/** What a phone sees that is not let in: the code first, then its name. */
export default function JoinScreen() {
  const [joined, setJoined] = useState<Caller | null>(null);
  const queries = useQueryClient();
  if (joined?.device) {
    return (
      <section className="join-screen">
        <p className="stamp">{say('Let in')}</p>
        <h1 className="big">{say('What is this phone called?')}</h1>
        <p>{say('What is logged here carries this name, and it stands on the other screen.')}</p>
        <NameDevice
          device={joined.device}
          act={say('Go to the stones')}
          onNamed={(device) => {
            const caller: Caller = { kind: 'device', device };
            keepCaller(localStorage, caller);
            queries.setQueryData(callerKey, caller);
            if (location.pathname === '/join') navigate('/');
          }}
        />
      </section>
    );
  }
  return <TypeCode onJoined={setJoined} />;
}

function TypeCode({ onJoined }: { onJoined: (caller: Caller) => void }) {
  const [scanned] = useState(() => codeInHash(location.hash));
  const [code, setCode] = useState('');
  const [sending, setSending] = useState(scanned !== null);
  const [failed, setFailed] = useState<ShownFailure | null>(null);
  const begun = useRef(false);
  const [waits, setWaits] = useState(false);
  useEffect(() => {
    // a browser that keeps nothing has nothing that waits
    Promise.all([unsentLogs(), photographShelf.read()]).then(
      (held) => setWaits(held.some(({ length }) => length > 0)),
      () => {},
    );
  }, []);

  const send = async (typed: string) => {
    setSending(true);
    setFailed(null);
    try {
      onJoined(await joinWith(typed));
    } catch (thrown) {
      setFailed(shownFailure(thrown));
      setCode('');
      setSending(false);
    }
  };
  useEffect(() => {
    document.title = say('Let this phone in · Stonetone');
    if (scanned === null || begun.current) return;
    begun.current = true;
    // a code is of use once: it stays in no history
    history.replaceState(null, '', location.pathname);
    void send(scanned);
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!sending) void send(code);
  };
  const digits = code.replace(/\s/g, '').length;
  return (
    <form className="join-screen" onSubmit={submit}>
      <p className="stamp">{say('Stonetone')}</p>
      <h1 className="big">{sending ? say('Letting this phone in …') : say('Type the code')}</h1>
      {!sending && (
        <>
          <p>
            {sayRich(
              'On the machine that runs Stonetone open <b>Phones</b> and touch <b>Let a phone in</b>. It shows six digits.',
              { b: (words) => <b>{words}</b> },
            )}
          </p>
          {waits && <p>{say('What is not sent yet waits here until this phone is let in again.')}</p>}
          {failed && <FailureNotice failure={failed} />}
          <div className="join-code">
            <Field
              label={say('The six digits')}
              value={code}
              inputMode="numeric"
              autoComplete="one-time-code"
              maxLength={7}
              onChange={(event) => setCode(event.target.value.replace(/[^\d ]/g, ''))}
            />
          </div>
          <Button kind="act" type="submit" disabled={digits !== 6}>
            {say('Let this phone in')}
          </Button>
        </>
      )}
    </form>
  );
}
