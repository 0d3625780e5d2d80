import './MirrorDrawing.css';
import { say } from '../words/say.ts';

/** A small drawing of why the marks change sides: stone and print, the same sign on both, as in a mirror. */
export function MirrorDrawing() {
  return (
    <figure className="mirror-drawing">
      <svg
        viewBox="4 0 332 168"
        role="img"
        aria-label={say(
          'On the stone, marks 1 to 4 run clockwise from top left. On the print, mark 1 is at top right, 2 at top left, 3 at bottom left, 4 at bottom right.',
        )}
      >
        <path d="M40 26H130V120H40Z" fill="var(--stone)" />
        <path d="M210 26H300V120H210Z" fill="var(--sheet)" />
        <g fill="none" stroke="var(--ink)" strokeWidth="7">
          <path d="M66 100V46H106M66 72H96" />
          <path d="M274 100V46H234M274 72H244" />
        </g>
        <path d="M170 18V128" stroke="var(--edge)" strokeWidth="1.5" strokeDasharray="5 5" />
        <g className="mirror-numbers" textAnchor="middle">
          <text x="24" y="40">
            1
          </text>
          <text x="147" y="40">
            2
          </text>
          <text x="147" y="122">
            3
          </text>
          <text x="24" y="122">
            4
          </text>
          <text x="317" y="40">
            1
          </text>
          <text x="193" y="40">
            2
          </text>
          <text x="193" y="122">
            3
          </text>
          <text x="317" y="122">
            4
          </text>
        </g>
        <g className="mirror-words" textAnchor="middle">
          <text x="85" y="156">
            {say('stone')}
          </text>
          <text x="255" y="156">
            {say('print')}
          </text>
        </g>
      </svg>
    </figure>
  );
}
