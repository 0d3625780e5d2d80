import './StageLine.css';
import { type WorkStage, workStages } from '../../records/work.ts';
import { workStageWords } from './stageWords.ts';

/** How far a work has come along the line, as notches, with the words for where it stands. */
export function StageLine({ stage }: { stage: WorkStage }) {
  const reached = workStages.indexOf(stage);
  return (
    <span className="stage-line">
      <svg viewBox={`0 0 ${workStages.length * 11} 14`} aria-hidden="true">
        {workStages.map((each, index) => (
          <rect
            key={each}
            x={index * 11 + 1}
            y={index <= reached ? 1 : 9}
            width="7"
            height={index <= reached ? 12 : 4}
            className={index === reached ? 'at' : undefined}
          />
        ))}
      </svg>
      <span>{workStageWords[stage]}</span>
    </span>
  );
}
