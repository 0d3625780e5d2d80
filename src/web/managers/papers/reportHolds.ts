import type { ReportBlock } from '../../../records/setReport.ts';
import { say } from '../../words/say.ts';

/** What a part of a report holds, counted, such as “two paragraphs, 14 lines”. */
export function reportHolds(blocks: readonly ReportBlock[]): string {
  const counted = { paragraphs: 0, figures: 0, lines: 0, comparisons: 0, classes: 0, gaps: 0 };
  for (const block of blocks) {
    switch (block.kind) {
      case 'words':
        counted.paragraphs += block.paragraphs.length;
        break;
      case 'figures':
        counted.figures += block.names.length;
        break;
      case 'lines':
        counted.lines += block.lines.length;
        break;
      case 'comparison':
        counted.comparisons++;
        break;
      case 'balance':
        counted.classes += block.rows.length;
        break;
      case 'gaps':
        counted.gaps += block.groups.reduce((sum, { items }) => sum + items.length, 0);
        break;
      default:
        return block satisfies never;
    }
  }
  const { paragraphs, figures, lines, comparisons, classes, gaps } = counted;
  const held = [
    paragraphs > 0 && say('{paragraphs, plural, one {one paragraph} other {# paragraphs}}', { paragraphs }),
    figures > 0 && say('{figures, plural, one {one figure} other {# figures}}', { figures }),
    lines > 0 && say('{lines, plural, one {one line} other {# lines}}', { lines }),
    comparisons > 0 &&
      say('{comparisons, plural, one {one comparison} other {# comparisons}}', { comparisons }),
    classes > 0 && say('{classes, plural, one {one hazard class} other {# hazard classes}}', { classes }),
    gaps > 0 && say('{gaps, plural, one {one thing} other {# things}}', { gaps }),
  ].filter((part) => part !== false);
  return held.length === 0 ? say('nothing') : held.join(', ');
}
