import type { PrintReading } from '../../../records/patchReading.ts';
import type { TestStone } from '../../../records/testStone.ts';
import { measureTestStone } from '../../client/testStones.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import type { TestStonePageParts } from './testStonePageParts.ts';

/** Prints whose reading ended without findings, in their order. */
export function stoppedPrints(prints: readonly PrintReading[]): readonly PrintReading[] {
  return prints.filter(({ state }) => state === 'refused' || state === 'not-done' || state === 'stopped');
}

/** Whether the same photographs could be read if asked again: those that were refused were read, and don't fit. */
export function canGoOn(prints: readonly PrintReading[]): boolean {
  return prints.some(({ state }) => state === 'not-done' || state === 'stopped');
}

/** Why a print has no findings. */
export function stoppedWords({ name, state, reason }: PrintReading): string {
  if (state === 'stopped') return say('{name}: its reading was stopped before it was done.', { name });
  return reason === null
    ? say('{name}: its reading was cut off before it was done.', { name })
    : `${name}: ${told(reason).replace(/\.$/, '')}.`;
}

/** One press reads again what was stopped or cut off. */
export function ReadAgain({
  stone,
  saving,
  keep,
  kind,
}: Pick<TestStonePageParts, 'saving' | 'keep'> & {
  readonly stone: TestStone;
  readonly kind: 'act' | 'plain';
}) {
  const again = async () => {
    const asked = await saving.send(() => measureTestStone(stone.id));
    if (asked) keep(asked);
  };
  return (
    <Button kind={kind} disabled={saving.pending} onClick={() => void again()}>
      {say('Go on reading')}
    </Button>
  );
}

/** Beside findings of other prints: those that have none, why, and going on. */
export function StoppedPrints(
  parts: Pick<TestStonePageParts, 'stone' | 'saving' | 'keep'> & { prints: readonly PrintReading[] },
) {
  const stopped = stoppedPrints(parts.prints);
  if (stopped.length === 0) return null;
  return (
    <div className="list-foot">
      {stopped.map((print) => (
        <Notice key={print.print} kind="caution" title={say('Not read.')}>
          {stoppedWords(print)}
        </Notice>
      ))}
      {canGoOn(stopped) && <ReadAgain {...parts} kind="plain" />}
    </div>
  );
}
