import { toldOr } from '../words/told.ts';
import './RackItem.css';
import { useState } from 'react';
import { Link } from 'wouter';
import type { ComparisonSummary } from '../../records/comparisonEntry.ts';
import { comparisonFile } from '../client/comparisons.ts';
import { say } from '../words/say.ts';
import { dayWords, stateWords } from './entryWords.ts';
import { StoneSlab } from './StoneSlab.tsx';

/** One comparison on the rack: its stone, and under the board what was found. */
export function RackItem({ comparison }: { comparison: ComparisonSummary }) {
  const { id, title, createdAt, finding, sample, state } = comparison;
  const [bare, setBare] = useState(false);
  return (
    <li className="rack-item">
      <Link href={`/comparisons/${id}`}>
        <span className="rack-stone">
          <StoneSlab>
            {state === 'measured' && !bare ? (
              <img
                src={comparisonFile(id, 'stone.jpg', 480)}
                alt=""
                loading="lazy"
                onError={() => setBare(true)}
              />
            ) : (
              <span className="rack-bare" />
            )}
          </StoneSlab>
        </span>
        <span className="rack-words">
          <span className="rack-title">{title}</span>
          <span className="big rack-finding">{toldOr(finding) ?? stateWords(comparison)}</span>
          <span className="soft">{dayWords(createdAt)}</span>
          {sample && <span className="rack-sample">{say('Sample from Saltreach, an invented studio')}</span>}
        </span>
      </Link>
    </li>
  );
}
