import './Mixing.css';
import { useState } from 'react';
import { Link, useSearch } from 'wouter';
import type { MixForm, MixTyped } from '../../managers/mixing/mixForm.ts';
import { mixForms } from '../../managers/mixing/mixForms.ts';
import { mixTroubles } from '../../managers/mixing/mixTroubles.ts';
import { Button } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { NotFound } from '../NotFound.tsx';
import { askedParts } from './askedParts.ts';
import { MixAnswer } from './MixAnswer.tsx';
import { MixFieldLine } from './MixFieldLine.tsx';

/** One mixing question with its answer beside it, worked out while one types. */
export default function MixQuestion({ kind }: { kind: string }) {
  const form = mixForms.find((each) => each.kind === kind);
  return form ? <Question form={form} /> : <NotFound />;
}

function Question({ form }: { form: MixForm }) {
  const asked = useSearch();
  const [typed, setTyped] = useState<MixTyped>(() => askedParts(form, asked) ?? form.start);
  const { wrong, missing } = mixTroubles(form, typed);
  const ready = !missing && Object.keys(wrong).length === 0;
  const setField = (name: string, text: string) =>
    setTyped((now) => ({ ...now, fields: { ...now.fields, [name]: text } }));
  const setLine = (index: number, name: string, text: string) =>
    setTyped((now) => ({
      ...now,
      lines: now.lines.map((line, each) => (each === index ? { ...line, [name]: text } : line)),
    }));
  const { lines } = form;
  return (
    <div className="mix">
      <div className="mix-left">
        <PageHead stamp={<Link href="/mixing">Mixing: other questions</Link>} headline={form.asks} />
        <form className="mix-form" onSubmit={(event) => event.preventDefault()}>
          {lines && (
            <ul>
              {typed.lines.map((line, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name of their own
                <li key={index}>
                  {lines.fields.map((field) => (
                    <MixFieldLine
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
                      aria-label={`Leave out ${lines.label.toLowerCase()} ${index + 1}`}
                      onClick={() =>
                        setTyped((now) => ({ ...now, lines: now.lines.filter((_, each) => each !== index) }))
                      }
                    >
                      Leave out
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
                setTyped((now) => ({
                  ...now,
                  lines: [
                    ...now.lines,
                    Object.fromEntries(
                      lines.fields.map(({ name, is }) => [
                        name,
                        is.kind === 'choice' ? is.options[0]![0] : '',
                      ]),
                    ),
                  ],
                }))
              }
            >
              {lines.add}
            </Button>
          )}
          <div className="fields mix-fields">
            {form.fields.map((field) => (
              <MixFieldLine
                key={field.name}
                field={field}
                nth={null}
                text={typed.fields[field.name] ?? ''}
                trouble={wrong[field.name] ?? null}
                onType={(text) => setField(field.name, text)}
              />
            ))}
          </div>
          {form.acid && (
            <Notice kind="danger" title="Where it is acid:">
              acid into water or gum, never the other way; gloves and eye protection. Nitric never near
              alcohol, solvent or oily rags: it can set them on fire. The safety data sheet comes first.
            </Notice>
          )}
        </form>
      </div>
      <MixAnswer question={ready ? form.question(typed) : null} mixed={form.mixed} />
    </div>
  );
}
