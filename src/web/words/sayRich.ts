import { createElement, Fragment, type ReactNode } from 'react';
import { messageOf, sentenceOf, written } from './message.ts';

/** What a sentence with elements in it is filled with: values, elements, and by tag what is made of the words inside. */
export type RichValue = ReactNode | ((words: ReactNode) => ReactNode);

/**
 * An English sentence with elements in it, in the page's language: `Press <b>{act}</b> when it is dry.`
 * @param english a literal in ICU MessageFormat, as in `say`.
 */
export function sayRich(english: string, values: Readonly<Record<string, RichValue>>): ReactNode {
  const filled: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(values)) {
    filled[name] =
      typeof value === 'function' ? (inner: ReactNode[]) => value(together(inner)) : written(value);
  }
  const parts = messageOf(sentenceOf(english)).format<ReactNode>(filled as never);
  return Array.isArray(parts) ? together(parts) : parts;
}

function together(parts: readonly ReactNode[]): ReactNode {
  return createElement(Fragment, null, ...parts);
}
