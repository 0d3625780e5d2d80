import '../asking/Asking.css';
import { Link } from 'wouter';
import { mixForms } from '../../managers/mixing/mixForms.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

/** What is kept of mixing, each with what it is for. */
const kept = [
  {
    href: '/batches',
    name: say('Batch log'),
    holds: say('what was mixed when, and how strong'),
  },
  { href: '/inks', name: say('Ink'), holds: say('mixes of ink: their parts, modifier and string') },
  {
    href: '/kit',
    name: say('Kit'),
    holds: say('rollers, press set-ups, cloths and papers, to be picked at the bench'),
  },
] as const;

/** The mixing questions, in a printer's words. */
export default function MixingIndex() {
  return (
    <>
      <PageHead stamp={say('Mixing and kit')} headline={say('What do you want to know?')} />
      <ul className="ask-index ask-kept" aria-label={say('What is kept of mixing')}>
        {kept.map(({ href, name, holds }) => (
          <li key={href}>
            <Link href={href}>
              <span className="big">{name}</span>
              <span className="soft">{holds}</span>
            </Link>
          </li>
        ))}
      </ul>
      <ul className="ask-index">
        {mixForms.map(({ kind, asks, such }) => (
          <li key={kind}>
            <Link href={`/mixing/${kind}`}>
              <span className="big">{asks}</span>
              <span className="soft">{such}</span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
