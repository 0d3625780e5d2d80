import type { TestStone, TestStoneDraft } from '../../../records/testStone.ts';
import { say } from '../../words/say.ts';
import type { PhotographBelongs } from '../held/heldPhotograph.ts';

/** A photograph that was held for a test stone, and the id that the server gave it. */
interface SentForTestStone {
  /** On the device: a print is entered once under it. */
  readonly id: string;
  readonly kept: string;
  readonly belongs: Extract<PhotographBelongs, { readonly to: 'test-stone' }>;
}

/**
 * What of a test stone changes by a photograph of it.
 * @returns `there` where it is entered already, `replaced` where the stone got another photograph meanwhile
 */
export function testStoneWith(
  { drawn, prints }: Pick<TestStone, 'drawn' | 'prints'>,
  { id, kept, belongs }: SentForTestStone,
): Partial<TestStoneDraft> | 'there' | 'replaced' {
  const bare = { photograph: kept, corners: null, repeat: null, flat: null };
  if (belongs.repeatOf !== null) {
    // one and the same file tells nothing of how far a reading strays
    const set = <Shown extends { photograph: string; repeat: string | null }>(shown: Shown): Shown =>
      shown.repeat !== null || shown.photograph === kept ? shown : { ...shown, repeat: kept };
    if (belongs.as === 'stone')
      return drawn === null || set(drawn) === drawn ? 'there' : { drawn: set(drawn) };
    const print = prints.find((one) => one.id === belongs.repeatOf);
    if (!print || set(print) === print) return 'there';
    return { prints: prints.map((one) => (one === print ? set(one) : one)) };
  }
  if (belongs.as === 'stone') {
    if (drawn?.photograph === kept) return 'there';
    if ((drawn?.photograph ?? null) !== belongs.over) return 'replaced';
    return { drawn: bare, ruler: null };
  }
  if (prints.some((print) => print.id === id || print.photograph === kept)) return 'there';
  const name = say('Print {count}', { count: prints.length + 1 });
  return { prints: [...prints, { ...bare, id, name, comparisonId: null }] };
}
