import type { RoomScatter, SeenScatter } from '../../../records/trialDesign.ts';
import { fixed } from '../../words/figures.ts';
import { say } from '../../words/say.ts';

const parts = [
  { of: 'patch', name: say('Patches of one strip') },
  { of: 'strip', name: say('Strips of one stone') },
  { of: 'stone', name: say('Stones') },
] as const;

/** How much this room scatters by its own kept readings: how many told it, and what is unknown. */
export function RoomScatterWords({ room }: { room: RoomScatter }) {
  return (
    <section className="test-stone-form" aria-labelledby="room-scatter">
      <h3 id="room-scatter">{say('This room’s own scatter')}</h3>
      <dl className="plan-scatter">
        {parts.map(({ of, name }) => (
          <div key={of} className="plan-scatter-part">
            <dt>{name}</dt>
            <dd>{seenWords(room[of])}</dd>
          </div>
        ))}
      </dl>
      <p className="soft">{basisWords(room)}</p>
    </section>
  );
}

function seenWords({ value, low, high, units, comparisons }: SeenScatter): string {
  if (value === null || low === null || high === null)
    return say('unknown: {units} read, and three treated alike are the fewest that tell it', { units });
  return say(
    '±{value} of coverage ({low} to {high}), from {units} read and {comparisons} comparisons of like with like',
    { value: fixed(value, 3), low: fixed(low, 3), high: fixed(high, 3), units, comparisons },
  );
}

function basisWords({ stones, scatter, remembered }: RoomScatter): string {
  if (stones === 0) return say('No test stone was read here yet: scatter is taken from memory.');
  if (scatter === null)
    return say(
      'Read from {stones, plural, one {one test stone} other {{stones} test stones}}: too little to plan by, so scatter is taken from memory.',
      { stones },
    );
  const gap = { stone: say('stones'), strip: say('strips') } as const;
  const missing = remembered.flatMap((of) => (of === 'patch' ? [] : [gap[of]]));
  return missing.length === 0
    ? say(
        'Read from {stones, plural, one {one test stone} other {{stones} test stones}}, and planned by: what of printed less drawn coverage is left once what each patch got is taken out.',
        { stones },
      )
    : say(
        'Read from {stones, plural, one {one test stone} other {{stones} test stones}}, and planned by: what of printed less drawn coverage is left once what each patch got is taken out; what is unknown ({missing}) is taken as middling, from memory.',
        { stones, missing: missing.join(', ') },
      );
}
