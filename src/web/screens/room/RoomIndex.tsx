import '../asking/Asking.css';
import { Link } from 'wouter';
import { roomForms } from '../../managers/room/roomForms.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';

/** The questions about the room's air and about hands, in a printer's words. */
export default function RoomIndex() {
  return (
    <>
      <PageHead stamp={say('Room and hands')} headline={say('Before dust, vapour or a heavy stone')}>
        <ButtonLink href="/materials">{say('Materials and hazards')}</ButtonLink>
      </PageHead>
      <ul className="ask-index">
        {roomForms.map(({ kind, asks, such }) => (
          <li key={kind}>
            <Link href={`/room/${kind}`}>
              <span className="big">{asks}</span>
              <span className="soft">{such}</span>
            </Link>
          </li>
        ))}
      </ul>
      <Notice kind="caution" title={say('Figures for planning.')}>
        {say(
          'Local codes, safety data sheets, ventilation designed by somebody who may, fit-tested protection and your doctor come first. Nothing here clears a room for anybody.',
        )}
      </Notice>
    </>
  );
}
