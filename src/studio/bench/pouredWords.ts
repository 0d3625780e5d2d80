import type { PouredAmount } from '../../records/bench.ts';
import type { PouredHow, PouredTold } from '../../records/run.ts';
import { boundedAmount } from './pouredOf.ts';

const howWords: Readonly<Record<PouredHow, string>> = {
  measured: 'measured',
  'as planned': 'as planned',
  remembered: 'remembered, not measured',
  'not measured': 'used, not measured',
};

/** “12.5 ml ± 2.5”, or “12.5 ml, ± unknown” where nobody said what it was read on. */
export function pouredAmountWords({ value, unit, high }: PouredAmount): string {
  return high === null
    ? `${plain(value)} ${unit}, ± unknown`
    : `${plain(value)} ${unit} ± ${plain(high - value)}`;
}

/** What an event says was poured, with how it is known. */
export function pouredWords(told: PouredTold): string {
  const amount = boundedAmount(told);
  const what = amount === null ? howWords[told.how] : `${pouredAmountWords(amount)}, ${howWords[told.how]}`;
  return `${told.material}: ${what}${told.words ? ` (${told.words})` : ''}`;
}

function plain(value: number): string {
  return String(Number(value.toFixed(2)));
}
