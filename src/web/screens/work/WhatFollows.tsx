import type { WorkEntry } from '../../../records/workEntry.ts';
import { ButtonLink } from '../../parts/Button.tsx';
import { say } from '../../words/say.ts';
import { ToTheBench } from './ToTheBench.tsx';

/** The way from a drawing that is saved to what comes next on its stone; nothing once the stone is closed down or grained. */
export function WhatFollows({ work }: { work: WorkEntry }) {
  const way = (view: string, words: string) => (
    <ButtonLink kind="act" href={`/works/${work.id}/${view}`}>
      {words}
    </ButtonLink>
  );
  const { stage } = work;
  switch (stage) {
    case 'grained':
    case 'drawn':
      return way('etch', say('Plan the first etch'));
    case 'first-etch':
    case 'washed-out':
    case 'rolled-up':
    case 'second-etch':
      return <ToTheBench work={work} kind="act" />;
    case 'trial-proofs':
      return way('second-etch', say('Plan the second etch'));
    case 'proofs':
      return way('proofs', say('To its proofs'));
    case 'edition':
      return way('edition', say('To its edition'));
    case 'closed-down':
    case 'regrained':
      return null;
    default:
      return stage satisfies never;
  }
}
