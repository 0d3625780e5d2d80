import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LineStage, PouredTold } from '../../../records/run.ts';
import { batchesKey, listBatches } from '../../client/batches.ts';
import { batchShelf, oldFromDays } from '../../managers/batchShelf.ts';
import type { PouringChoice } from '../../managers/bench/pouringChoices.ts';
import { keepMark, markSteps, readMark } from '../../managers/bench/vesselMark.ts';
import { say } from '../../words/say.ts';
import { TargetPicks } from './TargetPicks.tsx';

/** More batches of a kind than stand on a shelf are not offered at the bench. */
const mostBatches = 6;

/** How much of one material: by one touch as planned, by steps, remembered, or used without being measured. */
export function PouredAmountFields({
  choice,
  stage,
  again,
  tannicBatchId,
  onPour,
}: {
  choice: PouringChoice;
  stage: LineStage;
  /** Whether some of it is logged already: nothing then asks to be touched. */
  again: boolean;
  /** The batch that is worked with, by the tools picked. */
  tannicBatchId: string | null;
  onPour: (told: PouredTold) => void;
}) {
  const { material, unit, plannedMl, batch, materialId } = choice;
  const [mark, setMark] = useState(() => readMark(localStorage, unit));
  const [value, setValue] = useState(plannedMl ?? 0);
  const [batchId, setBatchId] = useState('');
  const batches = useQuery({
    queryKey: [...batchesKey, 'bench', batch],
    queryFn: ({ signal }) => listBatches({ search: '', putBy: 'no', kind: batch }, null, signal),
    enabled: batch !== null,
  });
  const shelf = batchShelf(batches.data?.batches ?? []);
  const [withOld, setWithOld] = useState(false);
  const offered = [
    ...shelf.inUse.slice(0, mostBatches),
    ...shelf.old.filter(({ id }, index) => (withOld ? index < mostBatches : id === tannicBatchId)),
  ];
  const from = batchId || (offered.some(({ id }) => id === tannicBatchId) ? tannicBatchId! : '');
  const step = mark ?? 1;
  const said = `${Number(value.toFixed(2))} ${unit}`;
  const pour = (how: PouredTold['how']) =>
    onPour({
      material,
      how,
      amount: how === 'not measured' ? null : { value, unit },
      mark: how === 'measured' || how === 'as planned' ? mark : null,
      stage,
      batchId: from || null,
      materialId,
    });
  const asPlanned = plannedMl !== null && value === plannedMl;
  const set = value > 0;
  return (
    <>
      {offered.length > 0 && (
        <TargetPicks
          label={say('From the batch')}
          value={from}
          options={[...offered.map(({ id, name }) => [id, name] as const), ['', say('not said')]]}
          onPick={setBatchId}
        />
      )}
      {shelf.old.length > 0 && !withOld && (
        <button type="button" className="bench-target" onClick={() => setWithOld(true)}>
          {say('An older bottle, {oldFromDays} days and more', { oldFromDays })}
        </button>
      )}
      <div className="poured-step" role="group" aria-label={say('How much {material}', { material })}>
        <button
          type="button"
          className="bench-target"
          aria-label={say('{step} {unit} less', { step, unit })}
          disabled={!set}
          onClick={() => setValue(Math.max(0, value - step))}
        >
          −
        </button>
        <output>{set ? said : <small>{say('not said')}</small>}</output>
        <button
          type="button"
          className="bench-target"
          aria-label={say('{step} {unit} more', { step, unit })}
          onClick={() => setValue(value + step)}
        >
          +
        </button>
      </div>
      <TargetPicks
        label={say('Read on')}
        value={String(mark)}
        options={[
          ...markSteps[unit].map(
            (each) => [String(each), say('marks of {each} {unit}', { each, unit })] as const,
          ),
          ['null', say('not said: ± unknown')],
        ]}
        onPick={(next) => {
          const chosen = next === 'null' ? null : Number(next);
          setMark(chosen);
          keepMark(localStorage, unit, chosen);
        }}
      />
      <div className="poured-log">
        {set && (
          <button
            type="button"
            className={again ? 'bench-target' : 'bench-target first'}
            onClick={() => pour(asPlanned ? 'as planned' : 'measured')}
          >
            {asPlanned
              ? again
                ? say('As planned once more: {said}', { said })
                : say('As planned: {said}', { said })
              : again
                ? say('Measured once more: {said}', { said })
                : say('Measured: {said}', { said })}
          </button>
        )}
        {set && !asPlanned && (
          <button type="button" className="bench-target" onClick={() => pour('remembered')}>
            {say('Remembered: about {said}', { said })}
          </button>
        )}
        <button type="button" className="bench-target" onClick={() => pour('not measured')}>
          {say('Used, not measured')}
        </button>
      </div>
    </>
  );
}
