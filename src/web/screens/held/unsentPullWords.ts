import type { ShownPull } from '../../managers/held/pullsToSend.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

/** What becomes of a pull that was entered here. */
export function unsentPullWords({ sending, refusal }: ShownPull, unreachable: boolean): string {
  if (refusal)
    return say('Stonetone does not take it: {message} {remedy}', {
      message: told(refusal.message),
      remedy: told(refusal.remedy),
    });
  if (sending) return say('It is being sent.');
  return unreachable || !navigator.onLine
    ? say('Stonetone does not answer. Kept here, also when this page is closed; sent by itself later.')
    : say('Kept here; sent by itself.');
}
