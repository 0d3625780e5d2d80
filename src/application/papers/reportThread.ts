import { drawnPng } from '../../imaging/codecs/drawnPng.ts';
import { reportDocx } from '../../paper/documents/reportDocx.ts';
import { reportHtml } from '../../paper/documents/reportHtml.ts';
import type { PicturesOfReport } from '../../paper/documents/reportPictures.ts';
import { reportPdf } from '../../paper/sheets/reportSheet.ts';
import type { SetReport } from '../../records/setReport.ts';
import { answerSheet } from '../threads/answerSheet.ts';

export type ReportForm = 'html' | 'pdf' | 'docx';

interface ReportTask {
  readonly form: ReportForm;
  readonly report: SetReport;
  readonly pictures: PicturesOfReport;
}

await answerSheet(({ form, report, pictures }: ReportTask) => {
  switch (form) {
    case 'html':
      return new TextEncoder().encode(reportHtml(report, pictures));
    case 'pdf':
      return reportPdf(report, pictures);
    case 'docx':
      return reportDocx(report, pictures, drawnPng);
    default:
      return form satisfies never;
  }
});
