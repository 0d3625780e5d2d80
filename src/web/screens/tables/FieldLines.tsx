import type { ReactNode } from 'react';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';

/** A list of lines of fields, each changed where it stands or left out. */
export function FieldLines<Line>({
  className,
  name,
  lines,
  least = 0,
  onLines,
  children,
}: {
  className: string;
  /** What a line is, such as "part". */
  name: string;
  lines: readonly Line[];
  /** How many must stay. */
  least?: number;
  onLines: (lines: readonly Line[]) => void;
  /** The fields of one line. */
  children: (line: Line, index: number, set: (changes: Partial<Line>) => void) => ReactNode;
}) {
  return (
    <ul className={className}>
      {lines.map((line, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line has no name of its own until one is typed
        <li key={index}>
          {children(line, index, (changes) =>
            onLines(lines.map((each, at) => (at === index ? { ...each, ...changes } : each))),
          )}
          {lines.length > least && (
            <Button
              kind="quiet"
              aria-label={say('Leave out {name} {index}', { name, index: index + 1 })}
              onClick={() => onLines(lines.filter((_, at) => at !== index))}
            >
              {say('Leave out')}
            </Button>
          )}
        </li>
      ))}
    </ul>
  );
}
