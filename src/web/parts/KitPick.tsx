import { told } from '../words/told.ts';
import './KitPick.css';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import type { BatchEntry } from '../../records/batch.ts';
import type { KitEntry } from '../../records/kit.ts';
import type { RunTool } from '../../records/run.ts';
import { factsOf, kitWords } from '../../studio/bench/kitWords.ts';
import { batchesKey, listBatches } from '../client/batches.ts';
import { kitKey, lastInHandKey, listKitOf, readLastInHand } from '../client/kit.ts';
import { shownFailure } from '../client/shownFailure.ts';
import { kitToolWords } from '../managers/kitForm.ts';
import { midSentence } from '../words/midSentence.ts';
import { say } from '../words/say.ts';
import { FailureNotice } from './FailureNotice.tsx';
import { NewKit } from './NewKit.tsx';

/** What was picked: as it is kept in a log. */
export interface Picked {
  /** Id of the kit entry or batch; null where it was told in words alone. */
  readonly id: string | null;
  readonly words: string;
}

interface Offered extends Picked {
  readonly id: string;
  readonly name: string;
  readonly facts: string;
}

/** What each tool is called where it is picked. */
export const toolWords: Readonly<Record<RunTool, string>> = { ...kitToolWords, batch: say('Batch') };

/**
 * Picks one of the studio's tools, set-ups or batches by a touch: what is in use here first, else what was picked last
 * anywhere, then the rest. What is not in the kit yet is entered once and picked from then on.
 */
export function KitPick({
  tool,
  picked,
  onPick,
}: {
  tool: RunTool;
  picked: Picked | null;
  onPick: (picked: Picked) => void;
}) {
  const head = useId();
  const queries = useQueryClient();
  const [adding, setAdding] = useState(false);
  const found = useQuery({
    queryKey: tool === 'batch' ? [...batchesKey, 'offered'] : [...kitKey, tool],
    queryFn: ({ signal }) => offeredOf(tool, signal),
  });
  const last = useQuery({ queryKey: lastInHandKey, queryFn: readLastInHand });
  const first = picked?.id ?? last.data?.find((one) => one.tool === tool)?.id ?? null;
  const offered = (found.data ?? []).toSorted((a, b) => Number(b.id === first) - Number(a.id === first));
  const pick = ({ id, words }: Picked) => {
    onPick({ id, words });
    void queries.invalidateQueries({ queryKey: lastInHandKey });
  };
  return (
    <section className="kit-pick" aria-labelledby={head}>
      <h2 id={head}>{toolWords[tool]}</h2>
      {found.isError && <FailureNotice failure={shownFailure(found.error)} />}
      {found.isSuccess && offered.length === 0 && !adding && <p className="kit-none">{nothingYet(tool)}</p>}
      <ul>
        {offered.map((one) => (
          <li key={one.id}>
            <button type="button" aria-pressed={one.id === picked?.id} onClick={() => pick(one)}>
              <b>{one.name}</b>
              {one.facts !== '' && <span>{one.facts}</span>}
              <em>{one.id === picked?.id ? say('in use') : one.id === first ? say('used last') : ''}</em>
            </button>
          </li>
        ))}
      </ul>
      {tool !== 'batch' &&
        (adding ? (
          <NewKit
            tool={tool}
            onLeave={() => setAdding(false)}
            onAdded={(entry) => {
              setAdding(false);
              void queries.invalidateQueries({ queryKey: [...kitKey, tool] });
              pick({ id: entry.id, words: kitWords(entry) });
            }}
          />
        ) : (
          <button type="button" className="kit-new" onClick={() => setAdding(true)}>
            {say('Enter another {toolWords}', { toolWords: midSentence(toolWords[tool]) })}
          </button>
        ))}
    </section>
  );
}

async function offeredOf(tool: RunTool, signal: AbortSignal): Promise<readonly Offered[]> {
  if (tool !== 'batch') return (await listKitOf(tool, signal)).map(ofKit);
  const query = { search: '', putBy: 'no', kind: null } as const;
  return (await listBatches(query, null, signal)).batches.map(ofBatch);
}

function ofKit(entry: KitEntry): Offered {
  return {
    id: entry.id,
    name: entry.name,
    facts: factsOf(entry).map(told).join(', '),
    words: kitWords(entry),
  };
}

function ofBatch({ id, name, kind, ageDays }: BatchEntry): Offered {
  const age =
    ageDays === null
      ? say('age not known')
      : say('{ageDays, plural, one {1 day old} other {{ageDays} days old}}', { ageDays });
  return { id, name, facts: `${kind}, ${age}`, words: `${kind}: ${name}` };
}

function nothingYet(tool: RunTool): string {
  if (tool === 'batch')
    return say('No batch is logged yet. Gum, tannic solution, washout and base are logged under Mixing.');
  return say('No {toolWords} is in the kit yet. Enter it once; from then on it is picked.', {
    toolWords: midSentence(toolWords[tool]),
  });
}
