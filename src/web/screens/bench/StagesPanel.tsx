import { useState } from 'react';
import type { Correction, LineStage } from '../../../records/run.ts';
import { lineCourse } from '../../../studio/bench/lineCourse.ts';
import { lineRule, lineStages } from '../../../studio/bench/lineStages.ts';
import { corrections } from '../../../studio/bench/stagesDone.ts';
import { beginTap } from '../../managers/bench/stageTaps.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { GrainAwayQuestion } from './GrainAwayQuestion.tsx';
import { LoggedList } from './LoggedList.tsx';
import type { PanelParts } from './panelParts.ts';
import { StagesTold } from './StagesTold.tsx';
import { TargetPicks } from './TargetPicks.tsx';

const reasons = [
  say('not needed here'),
  say('done before, not logged'),
  say('no time today'),
  say('nothing to do it with'),
] as const;

/** Stages that the line has twice under one name: these are the later ones. */
const repeats = lineStages
  .filter(({ name }, index) => lineStages.findIndex((one) => one.name === name) < index)
  .map(({ stage }) => stage);

/** The whole line: what was done, and skipping, repeating, correcting or going anywhere in it. */
export function StagesPanel({ state, events, work, letterOf, onLog }: PanelParts) {
  const { last, next } = lineCourse(state.stages, work.stage);
  const [reason, setReason] = useState<(typeof reasons)[number]>(reasons[0]);
  const [correction, setCorrection] = useState<Correction>('hone');
  const [place, setPlace] = useState('');
  const [asking, setAsking] = useState(false);
  const begin = (stage: LineStage) => (stage === 'regrain' ? setAsking(true) : onLog(beginTap(stage)));
  const beginCorrection = () => {
    const words = place === '' ? say('the whole stone') : say('at {letterOf}', { letterOf: letterOf(place) });
    onLog({ kind: 'stage-started', payload: { stage: correction, words } });
  };
  return (
    <>
      <StagesTold state={state} />
      {last && last.state !== 'open' && (
        <button
          type="button"
          className="bench-target"
          onClick={() => onLog({ kind: 'repeated', payload: { stage: last.stage } })}
        >
          {say('Repeat: {last}', { last: told(last.name) })}
        </button>
      )}
      {next && (
        <section aria-labelledby="skip-head" className="bench-part">
          <h2 id="skip-head">{say('Skip: {lineRule}', { lineRule: told(lineRule(next).name) })}</h2>
          {!lineRule(next).mayBeSkipped && <p>{say('It is part of the line as most keep it: say why.')}</p>}
          <TargetPicks
            label={say('Because')}
            value={reason}
            options={reasons.map((each) => [each, each])}
            onPick={setReason}
          />
          <button
            type="button"
            className="bench-target"
            onClick={() => onLog({ kind: 'skipped', payload: { stage: next, words: reason } })}
          >
            {say('Skip {lineRule}', { lineRule: told(lineRule(next).name) })}
          </button>
        </section>
      )}
      <section aria-labelledby="any-head" className="bench-part">
        <h2 id="any-head">{say('Begin any stage of the line')}</h2>
        {asking && (
          <GrainAwayQuestion
            work={work}
            onYes={() => onLog(beginTap('regrain'))}
            onNo={() => setAsking(false)}
          />
        )}
        <div className="target-row">
          {lineStages
            .filter(({ stage }) => !corrections.includes(stage))
            .map(({ stage, name }, index) => (
              <button key={stage} type="button" className="bench-target" onClick={() => begin(stage)}>
                {repeats.includes(stage)
                  ? say('{place}. {name}, second time', { place: index + 1, name: told(name) })
                  : say('{place}. {name}', { place: index + 1, name: told(name) })}
              </button>
            ))}
        </div>
      </section>
      <section aria-labelledby="correct-head" className="bench-part">
        <h2 id="correct-head">{say('A correction')}</h2>
        <TargetPicks<Correction>
          label={say('Which')}
          value={correction}
          options={(corrections as readonly Correction[]).map((each) => [each, told(lineRule(each).name)])}
          onPick={setCorrection}
        />
        <TargetPicks
          label={say('Where')}
          value={place}
          options={[['', say('the whole stone')], ...work.zones.map(({ id }) => [id, letterOf(id)] as const)]}
          onPick={setPlace}
        />
        <button type="button" className="bench-target" onClick={beginCorrection}>
          {say('Begin: {lineRule}', { lineRule: told(lineRule(correction).name) })}
        </button>
      </section>
      {events.length > 0 && <LoggedList events={events} letterOf={letterOf} />}
    </>
  );
}
