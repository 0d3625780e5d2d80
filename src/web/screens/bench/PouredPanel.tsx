import './PouredPanel.css';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { EtchPlan } from '../../../records/etch.ts';
import type { LineStage, PouredTold } from '../../../records/run.ts';
import { lineRule } from '../../../studio/bench/lineStages.ts';
import { pouredAmountWords } from '../../../studio/bench/pouredWords.ts';
import { listMaterials, materialsKey } from '../../client/materials.ts';
import { pouringChoices, stagesToPourFor } from '../../managers/bench/pouringChoices.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { PouredAmountFields } from './PouredAmountFields.tsx';
import type { PanelParts } from './panelParts.ts';
import { TargetPicks } from './TargetPicks.tsx';

/** How much of what was poured or used: for the stage under way, or for one that is done and was not logged. */
export function PouredPanel({
  state,
  plan,
  onPour,
}: Pick<PanelParts, 'state'> & { plan: EtchPlan | null; onPour: (poured: PouredTold) => void }) {
  const stages = stagesToPourFor(state.stages);
  const [stage, setStage] = useState<LineStage>(stages[0]!);
  const [picked, setPicked] = useState<string | null>(null);
  const register = useQuery({
    queryKey: [...materialsKey, 'bench'],
    queryFn: ({ signal }) => listMaterials({ search: '', putBy: 'no' }, null, signal),
  });
  const choices = pouringChoices(stage, plan, register.data?.materials ?? []);
  const logged = state.poured.filter((one) => one.stage === stage);
  const isLogged = (material: string) => logged.some((one) => one.material === material);
  // the next that is not logged yet offers itself
  const choice =
    choices.find(({ material }) => material === picked) ??
    choices.find(({ material }) => !isLogged(material)) ??
    choices[0]!;
  return (
    <>
      {stages.length > 1 && (
        <TargetPicks
          label={say('For')}
          value={stage}
          options={stages.map((each) => [each, told(lineRule(each).name)] as const)}
          onPick={(each) => {
            setStage(each);
            setPicked(null);
          }}
        />
      )}
      <TargetPicks
        label={say('What')}
        value={choice.material}
        options={choices.map(({ material }) => [
          material,
          isLogged(material) ? say('{material} (logged)', { material }) : material,
        ])}
        onPick={setPicked}
      />
      <PouredAmountFields
        key={`${stage} ${choice.material}`}
        choice={choice}
        stage={stage}
        again={isLogged(choice.material)}
        tannicBatchId={state.picked.find(({ tool }) => tool === 'batch')?.id ?? null}
        onPour={(told) => {
          onPour(told);
          setPicked(null);
        }}
      />
      <section aria-labelledby="poured-head" className="bench-part">
        <h2 id="poured-head">{say('Logged for {lineRule}', { lineRule: told(lineRule(stage).name) })}</h2>
        {logged.length === 0 ? (
          <p>{say('Nothing yet. What nobody logs stays “only planned” in every paper.')}</p>
        ) : (
          <ul className="poured-logged">
            {logged.map(({ sequence, material, amount, how }) => (
              <li key={sequence}>
                {material} <b>{amount === null ? say('used, not measured') : pouredAmountWords(amount)}</b>
                {amount !== null && how !== 'measured' && `, ${how}`}
              </li>
            ))}
          </ul>
        )}
        <p>{say('Each entry adds to the ones before; “Take back” at the bench takes the last one away.')}</p>
      </section>
    </>
  );
}
