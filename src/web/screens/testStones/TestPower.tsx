import type { CheapestTrial, TrialDesign, TrialPower } from '../../../records/trialDesign.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';
import { told } from '../../words/told.ts';
import { RoomScatterWords } from './RoomScatterWords.tsx';
import { scatterNames } from './scatterNames.ts';
import { TestLayouts } from './TestLayouts.tsx';

/** What a test could notice, by how much stones scatter; and the cheapest of every layout that would do. */
export function TestPower({
  design: { wish, power, layouts, room },
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
        {say('What it could notice')}
      </h2>
      <table>
        <caption>{say('The smallest difference of coverage that would be noticed 8 times in 10')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('if stones scatter')}</th>
            {treatments.map(({ name }) => (
              <th key={name} scope="col">
                {told(name)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {power.map((row) => (
            <tr key={row.of}>
              <th scope="row">{scatterNames[row.of]}</th>
              {treatments.map(({ name, of }) => (
                <td key={name}>{noticedWords(of(row))}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft">
        {say(
          'By trying many made-up tests; how much stones scatter (low, middling, high) is from memory. Two stones alike are usually few; prints of one stone do not count as more.',
        )}
      </p>
      {room && <RoomScatterWords room={room} />}
      {layouts !== null && wish.wanted !== null && (
        <TestLayouts wish={wish} wanted={wish.wanted} layouts={layouts} onSize={onSize} />
      )}
    </section>
  );
}

function noticedWords(smallest: number | null): string {
  if (smallest === null) return say('nothing: nothing is repeated');
  return smallest >= 1 ? say('nothing short of all') : fixed(smallest, 2);
}
