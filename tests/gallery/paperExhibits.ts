import { reportPdf } from '../../src/paper/sheets/reportSheet.ts';
import { workProtocolPdf } from '../../src/paper/sheets/workProtocolSheet.ts';
import type { SheetExhibit } from './exhibits.ts';
import { reports } from './records/reports.ts';
import { workProtocols } from './records/workProtocols.ts';

/** Papers that leave the studio: protocols of works, reports. */
export const paperSheets: readonly SheetExhibit[] = [
  { name: 'protocol-low-water', pages: 1, pdf: () => workProtocolPdf(workProtocols.lowWater) },
  { name: 'protocol-slack-water', pages: 1, pdf: () => workProtocolPdf(workProtocols.slackWater) },
  { name: 'report-year', pages: 3, pdf: () => reportPdf(reports.year, reports.pictures) },
];
