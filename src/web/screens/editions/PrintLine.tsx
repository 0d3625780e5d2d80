import type { ReactNode } from 'react';
import {
  type CuratedPrint,
  type Impression,
  numberedKinds,
  type PrintKind,
  printKinds,
  type Verdict,
} from '../../../records/edition.ts';
import { ageWords } from '../../../studio/editions/openMatters.ts';
import { printKindWords, printLabel } from '../../../studio/editions/printLabels.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Picks } from '../../parts/Picks.tsx';
import { say } from '../../words/say.ts';

type Given = PrintKind | '';

const options: readonly (readonly [Given, string])[] = [
  ['', say('not given yet')],
  ...printKinds.map((kind) => [kind, printKindWords[kind]] as const),
];
const verdicts: readonly (readonly [Verdict, string])[] = [
  ['good', say('good')],
  ['second', say('second')],
  ['torn', say('torn')],
];

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
          {say('impression {n}: {verdict}{reason}', { n, verdict, reason: reason && `, ${reason}` })}
        </span>
        {photograph}
      </div>
      <Picks
        label={
          checked
            ? say('Impression {n} looked at again {check}', { n, check: checkWords(checked.ageMinutes) })
            : say('Impression {n} when dry: not looked at yet', { n })
        }
        value={checked ? checked.verdict : ('' as Verdict)}
        options={verdicts}
        onPick={onCheck}
      />
      <div className="fields">
        <Choice
          label={say('Impression {n} is given as', { n })}
          value={print?.kind ?? ''}
          options={options}
          onChoose={give}
        />
        {numbered && (
          <NumberField
            label={say('Number of impression {n}', { n })}
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

function checkWords(minutes: number | null): string {
  return minutes === null
    ? say('at an age not noted')
    : say('{age} after pulling', { age: ageWords(minutes) });
}
