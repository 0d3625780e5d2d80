import type { CheapestTrial, TrialDesign, TrialPower } from '../../../records/trialDesign.ts';
import { Button } from '../../parts/Button.tsx';

const scatters = {
  low: 'low',
  middle: 'middling',
  high: 'high',
  'this room': 'this room’s own',
} as const satisfies Record<TrialPower['of'], string>;

/** What a test could notice, by how much stones scatter; and the cheapest that would do. */
export function TestPower({
  design: { wish, power, cheapest },
  onSize,
}: {
  design: TrialDesign;
  onSize: (cheapest: CheapestTrial) => void;
}) {
  const treatments = [
    { name: wish.sub.name, of: (row: TrialPower) => row.sub },
    ...(wish.whole ? [{ name: wish.whole.name, of: (row: TrialPower) => row.whole }] : []),
    ...(wish.perStone ? [{ name: wish.perStone.name, of: (row: TrialPower) => row.perStone ?? null }] : []),
  ];
  return (
    <section className="test-stone-form plan-power" aria-labelledby="plan-power">
      <h2 id="plan-power" className="big">
        What it could notice
      </h2>
      <table>
        <caption>The smallest difference of coverage that would be noticed 8 times in 10</caption>
        <thead>
          <tr>
            <th scope="col">if stones scatter</th>
            {treatments.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {power.map((row) => (
            <tr key={row.of}>
              <th scope="row">{scatters[row.of]}</th>
              {treatments.map(({ name, of }) => (
                <td key={name}>{noticedWords(of(row))}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft">
        By simulation. How much stones, strips and patches scatter is from memory. Two replicates are usually
        few; prints of one stone are no replicates.
      </p>
      {cheapest === 'none' && <p>No test of up to 8 stones would notice a difference of {wish.wanted}.</p>}
      {cheapest !== null && cheapest !== 'none' && (
        <>
          <p>
            The cheapest that notices {wish.wanted} at middling scatter: <b>{cheapestWords(cheapest)}</b>.
          </p>
          {!sameSize(wish, cheapest) && <Button onClick={() => onSize(cheapest)}>Plan it so</Button>}
        </>
      )}
    </section>
  );
}

function noticedWords(smallest: number | null): string {
  if (smallest === null) return 'nothing: no replicate';
  return smallest >= 1 ? 'nothing short of all' : smallest.toFixed(2);
}

function cheapestWords({ stones, stripRepeats, patchRepeats, patches }: CheapestTrial): string {
  const parts = [
    stones === 1 ? 'one stone' : `${stones} stones`,
    ...(stripRepeats > 1 ? [`${stripRepeats} strips alike`] : []),
    patchRepeats === 1 ? 'no patch repeated' : `${patchRepeats} patches alike`,
  ];
  return `${parts.join(', ')}, ${patches} patches in all`;
}

function sameSize(size: Omit<CheapestTrial, 'patches'>, other: CheapestTrial): boolean {
  return (['stones', 'stripRepeats', 'patchRepeats'] as const).every((field) => size[field] === other[field]);
}
