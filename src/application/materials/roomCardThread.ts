import { workerData } from 'node:worker_threads';
import { type RoomCardInput, roomCardPdf } from '../../paper/sheets/roomCards.ts';
import { answer } from '../threads/answer.ts';

answer(await roomCardPdf(workerData as RoomCardInput));
