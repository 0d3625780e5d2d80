import { workerData } from 'node:worker_threads';
import type { PlanRequest } from '../../records/etch.ts';
import { etchPlan } from '../../studio/etch/etchPlan.ts';
import { answer } from '../threads/answer.ts';

answer(etchPlan(workerData as PlanRequest));
