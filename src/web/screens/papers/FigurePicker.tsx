import { useEffect, useRef, useState } from 'react';
import type { ReportFigure } from '../../../records/setReport.ts';
import { sourceWords } from '../../../studio/papers/report/keptWords.ts';
import { figureText } from '../../../studio/papers/report/reportWords.ts';
import { Button } from '../../parts/Button.tsx';
import { Field } from '../../parts/Field.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';

/** The figures that a report's words may hold: what each is, what it comes to with its ±, and where that is from. */
export function FigurePicker({
  label,
  figures,
  onPick,
  onLeave,
}: {
  label: string;
  figures: readonly ReportFigure[];
  onPick: (name: string) => void;
  onLeave: () => void;
}) {
  const [search, setSearch] = useState('');
  const whole = useRef<HTMLDivElement>(null);
  useEffect(() => {
    whole.current?.querySelector('input')?.focus();
  }, []);
  const found = figures.filter(({ label: name }) =>
    `${told(name)} ${name}`.toLowerCase().includes(search.trim().toLowerCase()),
  );
  return (
    <div
      ref={whole}
      className="figure-picker"
      role="group"
      aria-label={label}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onLeave();
        // Enter in the search takes the first that is found; it must not save the report
        if (event.key === 'Enter' && event.target instanceof HTMLInputElement) {
          event.preventDefault();
          if (found[0]) onPick(found[0].name);
        }
      }}
    >
      <Field
        label={say('Which figure?')}
        hint={say('They are those of the report as it was saved last.')}
        type="search"
        autoComplete="off"
        value={search}
        onChange={(event) => setSearch(event.target.value)}
      />
      {found.length === 0 ? (
        <p className="soft">
          {figures.length === 0
            ? say('There is no figure yet. Choose works above and save: then they stand here.')
            : say('No figure is called so. Ask for fewer letters.')}
        </p>
      ) : (
        <ul>
          {found.map((figure) => (
            <li key={figure.name}>
              <button type="button" onClick={() => onPick(figure.name)}>
                <b>{told(figure.label)}</b>
                <span className={figure.value === null ? 'soft' : 'figure-picker-value'}>
                  {toldText(figureText(figure))}
                </span>
                <span className="soft">{toldText(sourceWords(figure, figures))}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <Button kind="quiet" onClick={onLeave}>
        {say('No figure after all')}
      </Button>
    </div>
  );
}
