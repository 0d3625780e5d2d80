import type { ReactNode } from 'react';
import { type CuratedPrint, numberedKinds, type PrintKind, printKinds } from '../../../records/edition.ts';
import type { Impression, Verdict } from '../../../records/ledger.ts';
import { ageWords } from '../../../studio/editions/openMatters.ts';
import { printKindWords, printLabel } from '../../../studio/editions/printLabels.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';

type Given = PrintKind | '';

const options: readonly (readonly [Given, string])[] = [
  ['', say('not given yet')],
  ...printKinds.map((kind) => [kind, told(printKindWords[kind])] as const),
];
const verdictWords: Readonly<Record<Verdict, string>> = {
  good: say('good'),
  second: say('second'),
  torn: say('torn'),
};
const verdicts = (['good', 'second', 'torn'] as const).map((one) => [one, verdictWords[one]] as const);

/** One impression: how it looked at the press and when dry, and what it is given as. */
export function PrintLine({
  impression,
  print,
  prints,
  size,
  photograph,
  onPut,
  onCheck,
}: {
  impression: Impression;
  print: CuratedPrint | null;
  prints: readonly CuratedPrint[];
  size: number;
  /** Takes a photograph of it. */
  photograph: ReactNode;
  onPut: (print: CuratedPrint | null) => void;
  onCheck: (verdict: Verdict) => void;
}) {
  const { id, n, verdict, reason, checked } = impression;
  const numbered = print !== null && (numberedKinds as readonly PrintKind[]).includes(print.kind);
  const give = (kind: Given) => {
    if (kind === '') return onPut(null);
    const bears = (numberedKinds as readonly PrintKind[]).includes(kind);
    onPut({ impression: id, kind, number: bears ? nextFree(kind, prints, id) : null });
  };
  return (
    <li>
      <div className="print-mark">
        <span className="big">
          {print && (print.number !== null || !numbered) ? printLabel(print, size, prints) : '–'}
        </span>
        <span className="soft">
          {reason === ''
            ? say('print {n}: {verdict}', { n, verdict: verdictWords[verdict] })
            : say('print {n}: {verdict}, {reason}', {
                n,
                verdict: verdictWords[verdict],
                reason: told(reason),
              })}
        </span>
        {photograph}
      </div>
      <Picks
        label={
          checked ? lookedWords(n, checked.ageMinutes) : say('Print {n} when dry: not looked at yet', { n })
        }
        value={checked ? checked.verdict : ('' as Verdict)}
        options={verdicts}
        onPick={onCheck}
      />
      <div className="fields">
        <Choice
          label={say('Print {n} is given as', { n })}
          value={print?.kind ?? ''}
          options={options}
          onChoose={give}
        />
        {numbered && (
          <NumberField
            label={say('Number of print {n}', { n })}
            value={print.number}
            least={1}
            most={1000}
            onValue={(number) => onPut({ ...print, number })}
          />
        )}
      </div>
    </li>
  );
}

function nextFree(kind: PrintKind, prints: readonly CuratedPrint[], id: string): number {
  const taken = new Set(
    prints.filter((one) => one.kind === kind && one.impression !== id).map(({ number }) => number),
  );
  let number = 1;
  while (taken.has(number)) number++;
  return number;
}

function lookedWords(n: number, minutes: number | null): string {
  return minutes === null
    ? say('Print {n} looked at again, its age not noted', { n })
    : say('Print {n} looked at again {age} after pulling', { n, age: told(ageWords(minutes)) });
}
