import { workProtocolPdf } from '../../src/paper/sheets/workProtocolSheet.ts';
import type { SheetExhibit } from './exhibits.ts';
import { workProtocols } from './records/workProtocols.ts';

/** Papers that leave the studio: protocols of works. */
export const paperSheets: readonly SheetExhibit[] = [
  { name: 'protocol-low-water', pages: 1, pdf: () => workProtocolPdf(workProtocols.lowWater) },
  { name: 'protocol-slack-water', pages: 1, pdf: () => workProtocolPdf(workProtocols.slackWater) },
];
