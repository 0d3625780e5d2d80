import '../asking/Asking.css';
import { useState } from 'react';
import { Link, useSearch } from 'wouter';
import type { AskTyped } from '../../managers/asking/askForm.ts';
import { askTroubles } from '../../managers/asking/askTroubles.ts';
import type { MixForm } from '../../managers/mixing/mixForm.ts';
import { mixForms } from '../../managers/mixing/mixForms.ts';
import { Notice } from '../../parts/Notice.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { say } from '../../words/say.ts';
import { AskFields } from '../asking/AskFields.tsx';
import { NotFound } from '../NotFound.tsx';
import { askedParts } from './askedParts.ts';
import { MixAnswer } from './MixAnswer.tsx';

/** One mixing question with its answer beside it, worked out while one types. */
export default function MixQuestion({ kind }: { kind: string }) {
  const form = mixForms.find((each) => each.kind === kind);
  return form ? <Question form={form} /> : <NotFound />;
}

function Question({ form }: { form: MixForm }) {
  const asked = useSearch();
  const [typed, setTyped] = useState<AskTyped>(() => askedParts(form, asked) ?? form.start);
  const { wrong, missing } = askTroubles(form, typed);
  const ready = !missing && Object.keys(wrong).length === 0;
  return (
    <div className="ask">
      <div className="ask-left">
        <PageHead stamp={<Link href="/mixing">{say('Mixing: other questions')}</Link>} headline={form.asks} />
        <AskFields form={form} typed={typed} onType={setTyped}>
          {form.acid && (
            <Notice kind="danger" title={say('Where it is acid:')}>
              {say(
                'acid into water or gum, never the other way; gloves and eye protection. Nitric never near alcohol, solvent or oily rags: it can set them on fire. The safety data sheet comes first.',
              )}
            </Notice>
          )}
        </AskFields>
      </div>
      <MixAnswer question={ready ? form.question(typed) : null} mixed={form.mixed} />
    </div>
  );
}
