import { workerData } from 'node:worker_threads';
import { workProtocolPdf } from '../../paper/sheets/workProtocolSheet.ts';
import type { WorkProtocol } from '../../records/workProtocol.ts';
import { answer } from '../threads/answer.ts';

answer(await workProtocolPdf(workerData as WorkProtocol));
