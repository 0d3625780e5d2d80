import './StoneScreen.css';
import { useLocation } from 'wouter';
import type { StoneEntry } from '../../../records/stoneEntry.ts';
import { addStone } from '../../client/stones.ts';
import {
  cornersTyped,
  type StoneFacts,
  stoneFactsOf,
  stoneFactTroubles,
  stoneFactWords,
  stoneOfFacts,
} from '../../managers/stoneFacts.ts';
import { typedNumber } from '../../managers/typedNumber.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { SaveForm } from '../../parts/SaveForm.tsx';
import { StonePlan } from '../../parts/StonePlan.tsx';
import { say } from '../../words/say.ts';
import { useTypedForm } from '../useTypedForm.ts';
import { StoneFactFields } from './StoneFactFields.tsx';
import { useKeptStone } from './useKeptStone.ts';

/** Enters a stone: its picture grows as its measures are typed. */
export default function NewStone() {
  const [, go] = useLocation();
  const keep = useKeptStone();
  const form = useTypedForm<StoneEntry, StoneFacts>({
    entry: null,
    shelf: say('new stone'),
    typedOf: stoneFactsOf,
    check: stoneFactTroubles,
    send: (facts) => addStone(stoneOfFacts(facts)),
  });
  const enter = async () => {
    const stone = await form.save();
    if (stone) {
      keep(stone);
      go(`/stones/${stone.id}`);
    }
    return stone;
  };
  const mm = (text: string) => {
    const value = typedNumber(text);
    return value !== null && value >= 20 && value <= 3000 ? value : null;
  };
  return (
    <div className="stone-screen new">
      <div className="stone-head">
        <PageHead stamp={say('A new stone')} headline={say('What is it called, and how large is it?')} />
      </div>
      <div className="stone-bed">
        <div>
          <StonePlan
            widthMm={mm(form.values.width)}
            heightMm={mm(form.values.height)}
            corners={cornersTyped(form.values)}
            colour={form.values.colour}
          />
        </div>
      </div>
      <div className="stone-sheet">
        <SaveForm
          label={say('A new stone')}
          act={say('Enter the stone')}
          form={form}
          words={stoneFactWords}
          onSave={enter}
        >
          <StoneFactFields form={form} />
        </SaveForm>
      </div>
    </div>
  );
}
