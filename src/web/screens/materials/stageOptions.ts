import { lineStages } from '../../../studio/bench/lineStages.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** The stages to choose from, in the order of the line; one that bears an earlier one's name says that it comes after the second etch. */
export const stageOptions = lineStages.map(({ stage, name }, index) => {
  const again = lineStages.findIndex((one) => one.name === name) < index;
  return [stage, again ? say('{stage}, after the second etch', { stage: told(name) }) : told(name)] as const;
});
