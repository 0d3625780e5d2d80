import { useState } from 'react';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { putStoneBy } from '../../client/stones.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { Sure } from '../../parts/Sure.tsx';
import { say } from '../../words/say.ts';
import { useSaving } from '../useSaving.ts';
import { useKeptStone } from './useKeptStone.ts';

/** Takes a stone off the rack, or brings it back; nothing of it is lost either way. */
export function PutStoneBy({ stone }: { stone: StoneEntry }) {
  const [asking, setAsking] = useState(false);
  const keep = useKeptStone();
  const saving = useSaving<StoneEntry>();
  const set = async (putBy: boolean) => {
    setAsking(false);
    const saved = await saving.send(() => putStoneBy(stone.id, stone.version, putBy), keep);
    if (saved) keep(saved);
  };
  return (
    <section aria-label={say('On the rack or off it')}>
      {saving.trouble && (
        <Notice kind="trouble" title={saving.trouble.message}>
          {saving.trouble.code === 'stale-save'
            ? say('The stone is shown as it is kept now; try again.')
            : saving.trouble.remedy}
        </Notice>
      )}
      {stone.putBy ? (
        <Button kind="act" onClick={() => void set(false)} disabled={saving.pending}>
          {say('Put it back on the rack')}
        </Button>
      ) : (
        <Button kind="quiet" onClick={() => setAsking(true)}>
          {say('Take it off the rack')}
        </Button>
      )}
      {asking && (
        <Sure
          title={say('Take {stone} off the rack?', { stone: stone.name })}
          act={say('Take it off')}
          onLeave={() => setAsking(false)}
          onAct={() => void set(true)}
        >
          <p>
            {say('It leaves the rack’s list with its logs and photographs, and can be put back at any time.')}
          </p>
        </Sure>
      )}
    </section>
  );
}
