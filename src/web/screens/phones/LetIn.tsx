import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { LettingInCode, LettingInState } from '../../../records/device.ts';
import {
  devicesKey,
  endLettingIn,
  lettingInKey,
  openLettingIn,
  readLettingIn,
} from '../../client/devices.ts';
import { type ShownFailure, shownFailure } from '../../client/shownFailure.ts';
import { Button } from '../../parts/Button.tsx';
import { FailureNotice } from '../../parts/FailureNotice.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { CodeSquare } from './CodeSquare.tsx';

/** Asks for a code, shows it while it holds, and says what became of it. */
export function LetIn() {
  const queries = useQueryClient();
  const [code, setCode] = useState<LettingInCode | null>(null);
  const [failed, setFailed] = useState<ShownFailure | null>(null);
  const lettingIn = useQuery({
    queryKey: lettingInKey,
    queryFn: readLettingIn,
    enabled: code !== null,
    // a phone that came in gets its name a little later
    refetchInterval: ({ state }) => (!state.data || state.data.state === 'open' ? 1000 : 5000),
    staleTime: 0,
  });
  const state = code === null ? null : (lettingIn.data ?? null);
  const used = state?.state === 'used' ? state.device : null;
  useEffect(() => {
    if (used !== null) void queries.invalidateQueries({ queryKey: devicesKey });
  }, [used, queries]);

  const open = async () => {
    setFailed(null);
    try {
      const fresh = await openLettingIn();
      queries.setQueryData<LettingInState>(lettingInKey, {
        state: 'open',
        secondsLeft: fresh.secondsLeft,
        device: null,
      });
      setCode(fresh);
    } catch (thrown) {
      setFailed(shownFailure(thrown));
    }
  };
  const end = () => {
    setCode(null);
    void endLettingIn();
  };

  if (code !== null && (state === null || state.state === 'open')) {
    return <OpenCode code={code} secondsLeft={state?.secondsLeft ?? code.secondsLeft} onEnd={end} />;
  }
  return (
    <section className="let-in" aria-label={say('Let a phone in')}>
      {failed && <FailureNotice failure={failed} />}
      <p role="status" className="let-in-said">
        {state && became(state)}
      </p>
      <Button kind="act" onClick={open}>
        {state === null
          ? say('Let a phone in')
          : state.state === 'used'
            ? say('Let another phone in')
            : say('Show a new code')}
      </Button>
    </section>
  );
}

function OpenCode({
  code,
  secondsLeft,
  onEnd,
}: {
  code: LettingInCode;
  secondsLeft: number;
  onEnd: () => void;
}) {
  return (
    <section className="let-in open" aria-label={say('The code')}>
      <CodeSquare
        picture={code.picture}
        label={say('QR code: opens {address} with the code typed', { address: code.address })}
      />
      <div>
        <p>{say('With the phone’s camera take the square, or open')}</p>
        <p className="let-in-address">{code.address}</p>
        <p>{say('and type')}</p>
        <p className="big let-in-digits">
          {code.code.slice(0, 3)} {code.code.slice(3)}
        </p>
        <p className="let-in-left">
          {sayRich('It holds {minutes} more, for one phone. <span>Show it to nobody else.</span>', {
            minutes: minutes(secondsLeft),
            span: (words) => <span className="soft">{words}</span>,
          })}
        </p>
        <Button onClick={onEnd}>{say('End this code')}</Button>
      </div>
    </section>
  );
}

function minutes(seconds: number): string {
  return say('{seconds}:{padStart} min', {
    seconds: Math.floor(seconds / 60),
    padStart: String(seconds % 60).padStart(2, '0'),
  });
}

function became({ state, device }: LettingInState): string {
  switch (state) {
    case 'used':
      return say('{device} is in.', { device: device ?? say('A phone') });
    case 'over':
      return say('The time of the code is over; nobody used it.');
    case 'spoiled':
      return say(
        'The code was typed wrongly five times, so it holds no longer. If that was not you, somebody else is on this network.',
      );
    default:
      return say('The code was ended.');
  }
}
