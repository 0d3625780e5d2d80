import { type ClipboardEvent, useEffect, useRef, useState } from 'react';
import type { ReportPiece } from '../../../records/report.ts';
import type { ReportFigure } from '../../../records/setReport.ts';
import { figureNamed, figureText } from '../../../studio/papers/report/reportWords.ts';
import {
  besideCaret,
  insertPieces,
  readPieces,
  type ShownFigure,
  showPieces,
} from '../../managers/papers/figureEditor.ts';
import { piecesOfTyped, typedOfPieces } from '../../managers/papers/typedPieces.ts';
import { Button } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { toldText } from '../../words/toldText.ts';
import { FigurePicker } from './FigurePicker.tsx';

/** How figures travel with words that are cut out or copied. */
const keptForm = 'application/x-stonetone-words';

/**
 * Words of a report with figures among them: each stands as itself, is picked from a list and put at the caret, and goes
 * as one sign; what is kept names it, so that it is filled anew whenever the report is set.
 */
export function FigureWords({
  id,
  label,
  value,
  figures,
  offered,
  onChange,
}: {
  id: string;
  label: string;
  value: string;
  figures: readonly ReportFigure[];
  /** Those that can be picked. */
  offered: readonly ReportFigure[];
  onChange: (typed: string) => void;
}) {
  const place = useRef<HTMLDivElement>(null);
  const caret = useRef<Range | null>(null);
  const [picking, setPicking] = useState(false);
  const shown = (name: string): ShownFigure => {
    const figure = figureNamed(figures, name);
    return figure
      ? { text: toldText(figureText(figure)), label: told(figure.label) }
      : { text: say('figure missing: {name}', { name }), label: say('no record gives it any more') };
  };
  // Only what comes from elsewhere is shown anew: what is typed stands there already, and the caret in it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `shown` reads nothing but the figures
  useEffect(() => {
    const root = place.current!;
    const typed = typedOfPieces(readPieces(root));
    if (typed !== value || root.dataset.figures !== figuresOf(figures))
      showPieces(root, piecesOfTyped(value), shown);
    root.dataset.figures = figuresOf(figures);
  }, [value, figures]);
  useEffect(() => {
    const root = place.current!;
    try {
      root.contentEditable = 'plaintext-only';
    } catch {
      // an older browser: what is pasted is taken as plain text below
      root.contentEditable = 'true';
    }
    const remember = () => {
      const chosen = document.getSelection();
      const range = chosen && chosen.rangeCount > 0 ? chosen.getRangeAt(0) : null;
      if (range && root.contains(range.commonAncestorContainer)) caret.current = range.cloneRange();
    };
    document.addEventListener('selectionchange', remember);
    return () => document.removeEventListener('selectionchange', remember);
  }, []);
  const tell = () => onChange(typedOfPieces(readPieces(place.current!)));
  const put = (pieces: readonly ReportPiece[]) => {
    const root = place.current!;
    const after = insertPieces(root, caret.current, pieces, shown);
    root.focus();
    const chosen = document.getSelection();
    chosen?.removeAllRanges();
    chosen?.addRange(after);
    caret.current = after.cloneRange();
    tell();
  };
  const pick = (name: string) => {
    setPicking(false);
    const [before, after] = caret.current ? besideCaret(caret.current) : [lastSignOf(value), ''];
    const gap = (needed: boolean): readonly ReportPiece[] => (needed ? [' '] : []);
    put([...gap(/[^\s(]/.test(before)), { figure: name }, ...gap(after === '')]);
  };
  const carry = (event: ClipboardEvent<HTMLDivElement>, cut: boolean) => {
    const chosen = document.getSelection();
    if (!chosen || chosen.isCollapsed || chosen.rangeCount === 0) return;
    const range = chosen.getRangeAt(0);
    event.preventDefault();
    event.clipboardData.setData('text/plain', range.toString());
    event.clipboardData.setData(keptForm, typedOfPieces(readPieces(range.cloneContents())));
    if (!cut) return;
    range.deleteContents();
    tell();
  };
  return (
    <div className="field figure-words">
      <span id={`${id}-label`} className="figure-words-label">
        {label}
      </span>
      <div
        ref={place}
        id={id}
        className="figure-words-place"
        role="textbox"
        aria-multiline="true"
        aria-labelledby={`${id}-label`}
        tabIndex={0}
        contentEditable
        suppressContentEditableWarning
        onInput={tell}
        onCopy={(event) => carry(event, false)}
        onCut={(event) => carry(event, true)}
        onPaste={(event) => {
          event.preventDefault();
          const kept = event.clipboardData.getData(keptForm);
          const plain = event.clipboardData.getData('text/plain');
          if (kept !== '') put(piecesOfTyped(kept));
          else if (plain !== '') put([plain.replaceAll('\r\n', '\n')]);
        }}
      />
      {picking ? (
        <FigurePicker
          label={say('A figure for “{label}”', { label })}
          figures={offered}
          onPick={pick}
          onLeave={() => {
            setPicking(false);
            place.current?.focus();
          }}
        />
      ) : (
        <Button
          kind="quiet"
          aria-label={say('Put a figure here: {label}', { label })}
          onClick={() => setPicking(true)}
        >
          {say('Put a figure here')}
        </Button>
      )}
    </div>
  );
}

/** The sign that words end with; none after a figure, or where nothing is written. */
function lastSignOf(typed: string): string {
  const last = piecesOfTyped(typed).at(-1);
  return typeof last === 'string' ? last.slice(-1) : '';
}

/** What figures show, so that a change of any is seen. */
function figuresOf(figures: readonly ReportFigure[]): string {
  return figures.map((figure) => `${figure.name} ${figureText(figure)}`).join('\n');
}
