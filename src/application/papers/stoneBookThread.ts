import { workerData } from 'node:worker_threads';
import { stoneBookPdf } from '../../paper/sheets/stoneBookSheet.ts';
import type { StoneBook } from '../../records/stoneBook.ts';
import { answer } from '../threads/answer.ts';

answer(await stoneBookPdf(workerData as StoneBook));
