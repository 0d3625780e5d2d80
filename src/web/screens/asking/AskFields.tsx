import './Asking.css';
import type { ReactNode } from 'react';
import type { AskForm, AskTyped } from '../../managers/asking/askForm.ts';
import { askTroubles } from '../../managers/asking/askTroubles.ts';
import { Button } from '../../parts/Button.tsx';
import { midSentence } from '../../words/midSentence.ts';
import { say } from '../../words/say.ts';
import { AskFieldLine } from './AskFieldLine.tsx';

/** What is typed into a question, field by field and line by line. */
export function AskFields({
  form,
  typed,
  onType,
  children,
}: {
  form: AskForm<{ readonly kind: string }>;
  typed: AskTyped;
  onType: (change: (now: AskTyped) => AskTyped) => void;
  /** What to mind, under the fields. */
  children?: ReactNode;
}) {
  const { wrong } = askTroubles(form, typed);
  const setField = (name: string, text: string) =>
    onType((now) => ({ ...now, fields: { ...now.fields, [name]: text } }));
  const setLine = (index: number, name: string, text: string) =>
    onType((now) => ({
      ...now,
      lines: now.lines.map((line, each) => (each === index ? { ...line, [name]: text } : line)),
    }));
  const { lines } = form;
  return (
    <form className="ask-form" onSubmit={(event) => event.preventDefault()}>
      {lines && (
        <ul>
          {typed.lines.map((line, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name of their own
            <li key={index}>
              {lines.fields.map((field) => (
                <AskFieldLine
                  key={field.name}
                  field={field}
                  nth={typed.lines.length > 1 ? index + 1 : null}
                  text={line[field.name] ?? ''}
                  trouble={wrong[`${index}.${field.name}`] ?? null}
                  onType={(text) => setLine(index, field.name, text)}
                />
              ))}
              {typed.lines.length > 1 && (
                <Button
                  kind="quiet"
                  aria-label={say('Leave out {label} {index}', {
                    label: midSentence(lines.label),
                    index: index + 1,
                  })}
                  onClick={() =>
                    onType((now) => ({ ...now, lines: now.lines.filter((_, each) => each !== index) }))
                  }
                >
                  {say('Leave out')}
                </Button>
              )}
            </li>
          ))}
        </ul>
      )}
      {lines && typed.lines.length < 12 && (
        <Button
          kind="quiet"
          onClick={() =>
            onType((now) => ({
              ...now,
              lines: [
                ...now.lines,
                Object.fromEntries(
                  lines.fields.map(({ name, is }) => [name, is.kind === 'choice' ? is.options[0]![0] : '']),
                ),
              ],
            }))
          }
        >
          {lines.add}
        </Button>
      )}
      <div className="fields ask-fields">
        {form.fields.map((field) => (
          <AskFieldLine
            key={field.name}
            field={field}
            nth={null}
            text={typed.fields[field.name] ?? ''}
            trouble={wrong[field.name] ?? null}
            onType={(text) => setField(field.name, text)}
          />
        ))}
      </div>
      {children}
    </form>
  );
}
