import '../asking/Asking.css';
import { Link } from 'wouter';
import { mixForms } from '../../managers/mixing/mixForms.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

/** The mixing questions, in a printer's words. */
export default function MixingIndex() {
  return (
    <>
      <PageHead stamp={say('Mixing')} headline={say('What do you want to know?')}>
        <ButtonLink href="/batches">{say('Batch log')}</ButtonLink>
        <ButtonLink href="/inks">{say('Ink')}</ButtonLink>
        <ButtonLink href="/kit">{say('Kit')}</ButtonLink>
      </PageHead>
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
