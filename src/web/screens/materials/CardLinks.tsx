import { useState } from 'react';
import type { LineStage } from '../../../records/run.ts';
import { doorCardAddress, startCardAddress } from '../../client/materials.ts';
import { Choice } from '../../parts/Choice.tsx';
import { say } from '../../words/say.ts';
import { sayRich } from '../../words/sayRich.ts';
import { stageOptions } from './stageOptions.ts';

/** The cards that are set from the register: for the door, and for beside the stone in a stage that is chosen. */
export function CardLinks() {
  const [stage, setStage] = useState<LineStage>('washout');
  return (
    <div className="list-foot card-links">
      <a href={doorCardAddress}>
        {sayRich('Card for the door <span>PDF</span>', {
          span: (words) => <span className="soft">{words}</span>,
        })}
      </a>
      <Choice
        label={say('Card beside the stone for')}
        value={stage}
        options={stageOptions}
        onChoose={(chosen) => setStage(chosen as LineStage)}
      />
      <a href={startCardAddress(stage)}>
        {sayRich('This card <span>PDF</span>', { span: (words) => <span className="soft">{words}</span> })}
      </a>
    </div>
  );
}
