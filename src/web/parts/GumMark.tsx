import './GumMark.css';
import type { GumState } from '../../records/rack.ts';
import { gumWords } from '../managers/standingWords.ts';

/** Whether a stone lies under gum, by a hatched, bare or dashed mark and in words. */
export function GumMark({ gum }: { gum: GumState }) {
  return (
    <span className={gum.gumNow ? 'gum-mark now' : `gum-mark ${gum.gummed}`}>
      <span aria-hidden="true" />
      {gumWords(gum)}
    </span>
  );
}
