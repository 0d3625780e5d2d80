import type { ComparisonEntry } from '../../records/comparisonEntry.ts';
import { comparisonDownload, comparisonFile } from '../client/comparisons.ts';
import { Fold } from '../parts/Fold.tsx';
import './DownloadList.css';
import { say } from '../words/say.ts';

const fileWords: Readonly<Record<string, string>> = {
  'sheet.pdf': say('Sheet to pin up, two pages (PDF)'),
  'overlay.png': say('Print on stone with the map (PNG)'),
  'stone.jpg': say('The stone, straightened (JPEG)'),
  'proof.jpg': say('The print, straightened and turned over (JPEG)'),
  'lost.png': say('Map of what was lost (PNG)'),
  'filled.png': say('Map of what filled in (PNG)'),
  'scum.png': say('Map of scum or tint (PNG)'),
  'sheet.png': say('Where the sheet lay (PNG)'),
  'ladder.svg': say('Tone ladder (SVG)'),
  'curve.svg': say('Tone curve (SVG)'),
  'comparison.json': say('All numbers (JSON)'),
};

/** Everything of a comparison to take away, each with what it is. */
export function DownloadList({ entry }: { entry: ComparisonEntry }) {
  if (entry.files.length === 0) return null;
  const order = Object.keys(fileWords);
  const place = (name: string) => (order.indexOf(name) === -1 ? order.length : order.indexOf(name));
  const files = [...entry.files].sort((a, b) => place(a) - place(b));
  return (
    <Fold title={say('Take it with you')}>
      <ul className="download-list">
        <li>
          <a href={comparisonDownload(entry.id)}>{say('Everything in one file (ZIP)')}</a>
        </li>
        {files.map((name) => (
          <li key={name}>
            <a href={comparisonFile(entry.id, name)} download={name}>
              {fileWords[name] ?? name}
            </a>
          </li>
        ))}
      </ul>
    </Fold>
  );
}
