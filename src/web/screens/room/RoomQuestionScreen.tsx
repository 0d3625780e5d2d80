import '../asking/Asking.css';
import { useState } from 'react';
import { Link } from 'wouter';
import type { AskTyped } from '../../managers/asking/askForm.ts';
import { askTroubles } from '../../managers/asking/askTroubles.ts';
import { type RoomForm, roomForms } from '../../managers/room/roomForms.ts';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { AskFields } from '../asking/AskFields.tsx';
import { NotFound } from '../NotFound.tsx';
import { RoomAnswerShown } from './RoomAnswerShown.tsx';

/** One question about the room or a lift with its answer beside it, worked out while one types. */
export default function RoomQuestionScreen({ kind }: { kind: string }) {
  const form = roomForms.find((each) => each.kind === kind);
  return form ? <Question form={form} /> : <NotFound />;
}

function Question({ form }: { form: RoomForm }) {
  const [typed, setTyped] = useState<AskTyped>(form.start);
  const { wrong, missing } = askTroubles(form, typed);
  const ready = !missing && Object.keys(wrong).length === 0;
  return (
    <div className="ask">
      <div className="ask-left">
        <PageHead
          stamp={<Link href="/room">{say('Room and hands: other questions')}</Link>}
          headline={form.asks}
        />
        <AskFields form={form} typed={typed} onType={setTyped} />
      </div>
      <RoomAnswerShown question={ready ? form.question(typed) : null} />
    </div>
  );
}
