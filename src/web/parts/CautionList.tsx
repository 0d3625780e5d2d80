import './CautionList.css';
import { useId } from 'react';
import { say } from '../words/say.ts';
import { Notice } from './Notice.tsx';

/** What is to be minded with a plan; nothing where there is nothing. */
export function CautionList({ cautions }: { cautions: readonly string[] }) {
  const id = useId();
  if (cautions.length === 0) return null;
  return (
    <section aria-labelledby={id} className="caution-list">
      <h2 id={id} className="big">
        {say('To mind')}
      </h2>
      {cautions.map((words) => (
        <Notice key={words} kind="caution" title="">
          {words}
        </Notice>
      ))}
    </section>
  );
}
