import type { ComparisonRequest } from '../../records/comparisonEntry.ts';
import type { Work } from '../../records/work.ts';

type Compared = Pick<ComparisonRequest, 'zones'> & {
  readonly stone: { readonly photograph: string };
  readonly proof: { readonly photograph: string };
};
type Candidate = Pick<Work, 'id' | 'zones' | 'photographs'>;

/**
 * Which of some works a comparison is of: those to which most of its photographs hang, the print's before the stone's; of
 * several, those whose zones it read. Nobody says it anywhere, so where two are left both may be meant.
 * @param works at least one, each with something to do with the comparison
 */
export function comparedWorks<W extends Candidate>(compared: Compared, works: readonly W[]): readonly W[] {
  const hang = ({ photographs }: W) => {
    const has = (id: string) => photographs.some(({ photograph }) => photograph === id);
    return (has(compared.proof.photograph) ? 2 : 0) + (has(compared.stone.photograph) ? 1 : 0);
  };
  const read = ({ zones }: W) =>
    compared.zones.filter(({ id, name }) => zones.some((zone) => zone.id === id && zone.name === name))
      .length;
  return strongest(strongest(works, hang), read);
}

function strongest<W>(works: readonly W[], strength: (work: W) => number): readonly W[] {
  const most = Math.max(...works.map(strength));
  return works.filter((work) => strength(work) === most);
}
