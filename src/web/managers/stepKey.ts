import { say } from '../words/say.ts';
/** The key of a step of a stone (by its work), or of the room (null). */
export function stepKey(workId: string | null, index: number): string {
  return `${workId ?? say('the room')} ${index}`;
}
