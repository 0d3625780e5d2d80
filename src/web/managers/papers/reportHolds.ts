import type { ReportBlock } from '../../../records/setReport.ts';

/** What a part of a report holds, counted, such as “two paragraphs, 14 lines”. */
export function reportHolds(blocks: readonly ReportBlock[]): string {
  const counted = { paragraphs: 0, figures: 0, lines: 0, comparisons: 0, classes: 0, items: 0 };
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
      case 'list':
        counted.items += block.items.length;
        break;
      default:
        return block satisfies never;
    }
  }
  const { paragraphs, figures, lines, comparisons, classes, items } = counted;
  const held = [
    paragraphs > 0 && (paragraphs === 1 ? 'one paragraph' : `${paragraphs} paragraphs`),
    figures > 0 && (figures === 1 ? 'one figure' : `${figures} figures`),
    lines > 0 && (lines === 1 ? 'one line' : `${lines} lines`),
    comparisons > 0 && (comparisons === 1 ? 'one comparison' : `${comparisons} comparisons`),
    classes > 0 && (classes === 1 ? 'one hazard class' : `${classes} hazard classes`),
    items > 0 && (items === 1 ? 'one item' : `${items} items`),
  ].filter((part) => part !== false);
  return held.length === 0 ? 'nothing' : held.join(', ');
}
