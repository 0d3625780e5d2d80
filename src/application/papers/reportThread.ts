import { workerData } from 'node:worker_threads';
import { drawnPng } from '../../imaging/codecs/drawnPng.ts';
import { reportDocx } from '../../paper/documents/reportDocx.ts';
import { reportHtml } from '../../paper/documents/reportHtml.ts';
import type { PicturesOfReport } from '../../paper/documents/reportPictures.ts';
import { reportPdf } from '../../paper/sheets/reportSheet.ts';
import type { SetReport } from '../../records/setReport.ts';
import { answer } from '../threads/answer.ts';

export type ReportForm = 'html' | 'pdf' | 'docx';

const { form, report, pictures } = workerData as {
  readonly form: ReportForm;
  readonly report: SetReport;
  readonly pictures: PicturesOfReport;
};

switch (form) {
  case 'html':
    answer(new TextEncoder().encode(reportHtml(report, pictures)));
    break;
  case 'pdf':
    answer(await reportPdf(report, pictures));
    break;
  case 'docx':
    answer(await reportDocx(report, pictures, drawnPng));
    break;
  default:
    form satisfies never;
}
