import { useEffect, useRef, useState } from 'react';
import { levelLines, levelsOf, withLevelTyped } from '../../managers/testStones/trialForm.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { keptName, shownName } from '../../words/ownNames.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { KnownLevel } from './KnownLevel.tsx';
import { useKnownNames } from './useKnownNames.ts';

/** What is tried of one thing that is compared: a line each, by hand or from what is known here. */
export function LevelFields({
  name,
  levels,
  example,
  onLevels,
}: {
  /** What is compared. */
  name: string;
  levels: readonly string[];
  example: string;
  onLevels: (levels: readonly string[]) => void;
}) {
  const named = told(name);
  const known = useKnownNames(name);
  const group = useRef<HTMLFieldSetElement>(null);
  const [asked, setAsked] = useState(0);
  // A line that was asked for is typed on at once.
  useEffect(() => {
    if (asked > 0) [...(group.current?.querySelectorAll('input') ?? [])].at(-1)?.focus();
  }, [asked]);
  // A blank line goes, what was pasted with commas is parted: once the hand has left, not under it.
  const settle = () => {
    const settled = levelLines(levelsOf({ levels }).map((level) => keptName(level, known)));
    if (settled.join('\n') !== levels.join('\n')) onLevels(settled);
  };
  return (
    <fieldset
      ref={group}
      className="plan-tried"
      onBlur={({ currentTarget, relatedTarget }) => !currentTarget.contains(relatedTarget) && settle()}
    >
      <legend>{name ? say('{name}: what you try', { name: named }) : say('What you try')}</legend>
      {levels.map((level, index) => (
        <Field
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by nothing else
          key={index}
          label={
            name
              ? say('{name}, number {number}', { name: named, number: index + 1 })
              : say('Number {number}', { number: index + 1 })
          }
          {...(index === 0 && { hint: say('Such as {example}.', { example: told(example) }) })}
          value={shownName(level, known)}
          maxLength={200}
          onChange={(event) => onLevels(levels.with(index, keptName(event.target.value, known)))}
        />
      ))}
      <Button
        aria-label={name ? say('Try one more: {name}', { name: named }) : say('Try one more')}
        onClick={() => {
          onLevels([...levels, '']);
          setAsked(asked + 1);
        }}
      >
        {say('Try one more')}
      </Button>
      <KnownLevel known={known} tried={levels} onAdd={(level) => onLevels(withLevelTyped(levels, level))} />
    </fieldset>
  );
}
