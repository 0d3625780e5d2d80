import { say } from '../../words/say.ts';
import { heldIdOf } from './heldName.ts';
import type { HeldPull } from './heldPull.ts';
import type { PhotographsToSendView } from './photographsToSend.ts';

/** What a pull that was entered here still lacks until it can be read, each as a sentence. */
export function missingWords(
  { typed }: HeldPull,
  { waiting }: Pick<PhotographsToSendView, 'waiting'>,
): readonly string[] {
  if (typed.way !== 'camera') return [];
  const held = typed.photographs.flatMap(({ photograph }) => heldIdOf(photograph) ?? []);
  const unsent = held.flatMap((id) => waiting.find(({ photograph }) => photograph.id === id) ?? []);
  const onTheWay = unsent.filter(({ photograph }) => photograph.kept === null);
  const share = onTheWay.find((one) => one.share !== null)?.share ?? null;
  const found: string[] = [];
  if (share !== null)
    found.push(say('Its photograph is on its way, {share} %.', { share: Math.round(share * 100) }));
  else if (onTheWay.length > 0)
    found.push(
      say(
        '{count, plural, one {Its photograph is not sent yet.} other {Its # photographs are not sent yet.}}',
        { count: onTheWay.length },
      ),
    );
  if (held.length > unsent.length) found.push(say('A photograph of it was thrown away here.'));
  if (held.length > 0)
    found.push(say('Its marks and grey chips are not set: that can be done once it is sent.'));
  found.push(say('It is not read yet: that begins once it is sent.'));
  return found;
}
