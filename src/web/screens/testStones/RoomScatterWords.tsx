import type { RoomScatter, SeenScatter } from '../../../records/trialDesign.ts';

const parts = [
  { of: 'patch', name: 'Patches of one strip' },
  { of: 'strip', name: 'Strips of one stone' },
  { of: 'stone', name: 'Stones' },
] as const;

/** How much this room scatters by its own kept readings: how many told it, and what is unknown. */
export function RoomScatterWords({ room }: { room: RoomScatter }) {
  return (
    <section className="test-stone-form" aria-labelledby="room-scatter">
      <h3 id="room-scatter">This room’s own scatter</h3>
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
    return `unknown: ${units} read, and three treated alike are the fewest that tell it`;
  const range = `${low.toFixed(3)} to ${high.toFixed(3)}`;
  return `±${value.toFixed(3)} of coverage (${range}), from ${units} read and ${comparisons} comparisons of like with like`;
}

function basisWords({ stones, scatter, remembered }: RoomScatter): string {
  if (stones === 0) return 'No test stone was read here yet: scatter is taken from memory.';
  const from = stones === 1 ? 'one test stone' : `${stones} test stones`;
  if (scatter === null) return `Read from ${from}: too little to plan by, so scatter is taken from memory.`;
  const gap = { stone: 'stones', strip: 'strips' } as const;
  const missing = remembered.flatMap((of) => (of === 'patch' ? [] : [gap[of]]));
  return missing.length === 0
    ? `Read from ${from}, and planned by, as printed less drawn coverage, with every treatment taken out.`
    : `Read from ${from}, and planned by, as printed less drawn coverage, with every treatment taken out; what is unknown (${missing.join(', ')}) is taken as middling, from memory.`;
}
