import type { AskField } from '../../managers/asking/askForm.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';

/** One field of a question. */
export function AskFieldLine({
  field,
  nth,
  text,
  trouble,
  onType,
}: {
  field: AskField;
  /** Which line of several it stands in, from 1; null where there is but one. */
  nth: number | null;
  text: string;
  trouble: string | null;
  onType: (text: string) => void;
}) {
  const { label, unit, hint, is } = field;
  if (is.kind === 'choice')
    return (
      <Choice
        label={nth === null ? label : `${label} ${nth}`}
        {...(hint && { hint })}
        value={text}
        options={is.options}
        onChoose={onType}
      />
    );
  return (
    <Field
      label={label}
      {...(nth !== null && { 'aria-label': say('{label}, line {nth}', { label, nth }) })}
      {...(unit && { unit })}
      {...(hint && { hint })}
      {...(is.kind === 'number' && { inputMode: 'decimal' as const })}
      autoComplete="off"
      maxLength={200}
      value={text}
      trouble={trouble}
      onChange={(event) => onType(event.target.value)}
    />
  );
}
