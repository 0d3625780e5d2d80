import '../asking/Asking.css';
import { Link } from 'wouter';
import { mixForms } from '../../managers/mixing/mixForms.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { PageHead } from '../../parts/PageHead.tsx';

/** The mixing questions, in a printer's words. */
export default function MixingIndex() {
  return (
    <>
      <PageHead stamp="Mixing" headline="What do you want to know?">
        <ButtonLink href="/batches">Batch log</ButtonLink>
        <ButtonLink href="/inks">Ink</ButtonLink>
        <ButtonLink href="/kit">Kit</ButtonLink>
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
