import './StoneOnRack.css';
import { type CSSProperties, memo } from 'react';
import { Link } from 'wouter';
import type { StoneSummary } from '../../records/stoneEntry.ts';
import { stoneColourWords } from '../managers/stoneColours.ts';
import { sizeWords } from '../words/lengths.ts';
import { say } from '../words/say.ts';
import { GumMark } from './GumMark.tsx';
import { StoneDrawing } from './StoneDrawing.tsx';
import { StoneSlab } from './StoneSlab.tsx';
import { workStageWords } from './stageWords.ts';
import { stoneTint } from './stoneTint.ts';

/**
 * One stone on the rack, its face in the rack's scale, and under the board what it is and how it stands.
 * A search draws only those that changed: the others are kept as they are drawn.
 */
export const StoneOnRack = memo(function StoneOnRack({ stone }: { stone: StoneSummary }) {
  const { id, name, widthMm, heightMm, colour, work, gum, putBy, sample } = stone;
  const size = { '--across': widthMm, '--down': heightMm, ...stoneTint(colour) } as CSSProperties;
  return (
    <li className="on-rack">
      <Link href={`/stones/${id}`}>
        <span className="on-rack-place" style={size}>
          <StoneSlab>
            <span className="on-rack-face">
              {work && <StoneDrawing work={work.id} widthMm={widthMm} heightMm={heightMm} fineness={100} />}
            </span>
          </StoneSlab>
        </span>
        <span className="on-rack-words">
          <span className="big on-rack-name">{name}</span>
          <span className="soft">
            {sizeWords(widthMm, heightMm)}
            {colour && `, ${stoneColourWords(colour)}`}
          </span>
          <span className="on-rack-standing">
            {work ? workStageWords[work.stage] : putBy ? say('off the rack') : say('free')}
          </span>
          {gum && <GumMark gum={gum} />}
          {work && <span className="soft">{work.title}</span>}
          {sample && (
            <span className="on-rack-sample">{say('Sample from Saltreach, an invented studio')}</span>
          )}
        </span>
      </Link>
    </li>
  );
});
