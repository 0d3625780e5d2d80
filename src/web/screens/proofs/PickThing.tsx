import { useQuery } from '@tanstack/react-query';
import { useId, useState } from 'react';
import type { KitEntry } from '../../../records/kit.ts';
import type { PickedThing } from '../../../records/pull.ts';
import { kitWords } from '../../../studio/bench/kitWords.ts';
import { lastHeard } from '../../client/heardOrHeld.ts';
import { kitKey, listKitOf } from '../../client/kit.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { toldText } from '../../words/toldText.ts';

type PulledWith = 'paper' | 'ink' | 'roller';

interface ToolWords {
  readonly name: string;
  /** Where none is known yet. */
  readonly first: string;
  readonly another: string;
}

const words: Readonly<Record<PulledWith, ToolWords>> = {
  paper: {
    name: say('Paper'),
    first: say('What paper it is, as it is called here'),
    another: say('Another paper'),
  },
  ink: {
    name: say('Ink'),
    first: say('What ink it is, as it is called here'),
    another: say('Another ink'),
  },
  roller: {
    name: say('Roller'),
    first: say('What roller it is, as it is called here'),
    another: say('Another roller'),
  },
};

/** Picks what a pull was made with by a touch: what earlier pulls had first, then the kit; something new is typed once. */
export function PickThing({
  tool,
  picked,
  before,
  onPick,
  onNone,
}: {
  tool: PulledWith;
  picked: PickedThing | null;
  before: readonly PickedThing[];
  /** `entry` is what the kit has of it; null where it is in no kit. */
  onPick: (picked: PickedThing, entry: KitEntry | null) => void;
  /** Takes the pick back, where nothing needs to be picked. */
  onNone?: () => void;
}) {
  const head = useId();
  const [typing, setTyping] = useState(false);
  const kit = useQuery({
    queryKey: [...kitKey, tool, 'for a pull'],
    queryFn: (asking) => lastHeard(asking, `kit ${tool}`, () => listKitOf(tool, asking.signal)),
  });
  const known = [...before, ...(kit.data ?? []).map(ofKit)];
  const all = !typing && picked && !known.some((one) => same(one, picked)) ? [picked, ...known] : known;
  const offered = all.filter((one, at) => all.findIndex((other) => same(one, other)) === at);
  return (
    <section className="pick-thing" aria-labelledby={head}>
      <h2 id={head}>{words[tool].name}</h2>
      <ul>
        {offered.map((one) => {
          const on = picked !== null && same(one, picked);
          return (
            <li key={`${one.id} ${one.words}`}>
              <button
                type="button"
                className="touch"
                aria-pressed={on}
                onClick={() =>
                  on && onNone ? onNone() : onPick(one, kit.data?.find(({ id }) => id === one.id) ?? null)
                }
              >
                {one.id === null ? one.words : toldText(one.words)}
                {before[0] && same(one, before[0]) && <em>{say('used last')}</em>}
              </button>
            </li>
          );
        })}
      </ul>
      {typing || offered.length === 0 ? (
        <Field
          label={offered.length === 0 ? words[tool].first : words[tool].another}
          autoComplete="off"
          maxLength={200}
          value={picked && picked.id === null && !known.some((one) => same(one, picked)) ? picked.words : ''}
          onChange={(event) => {
            const { value } = event.target;
            setTyping(true);
            if (value.trim() !== '') onPick({ id: null, words: value }, null);
            else onNone?.();
          }}
        />
      ) : (
        <Button kind="quiet" onClick={() => setTyping(true)}>
          {words[tool].another}
        </Button>
      )}
    </section>
  );
}

function same(one: PickedThing, other: PickedThing): boolean {
  return one.id !== null && other.id !== null ? one.id === other.id : one.words === other.words;
}

function ofKit(entry: KitEntry): PickedThing {
  return { id: entry.id, words: kitWords(entry) };
}
