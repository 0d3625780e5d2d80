import { z } from 'zod';
import type { Services } from '../../application/openServices.ts';
import { giveApproval, listApprovals, withdrawApproval } from '../../application/pulls/approvals.ts';
import { readRoomNoise, typeRoomNoise } from '../../application/pulls/readRoomNoise.ts';
import { readSeries } from '../../application/pulls/readSeries.ts';
import { changeSeriesSettings, readSeriesSettings } from '../../application/pulls/seriesSettings.ts';
import { idSchema } from '../../contract/common.ts';
import {
  approvalInputSchema,
  approvalListSchema,
  approvalSchema,
  roomNoiseSaveSchema,
  roomNoiseSchema,
  seriesSettingsSaveSchema,
  seriesSettingsSchema,
  withdrawalSchema,
  workSeriesSchema,
} from '../../contract/workSeries.ts';
import type { Approval, KeptSeriesSettings, RoomNoise, WorkSeries } from '../../records/workSeries.ts';
import type { App } from '../app.ts';
import { sendFailure, sendRefusal } from '../failureReply.ts';
import { answerOf } from './answerOf.ts';
import { refusals, saveRefusals } from './refusals.ts';

const tags = ['series'];
const params = z.object({ id: idSchema });
const series = answerOf<WorkSeries>(workSeriesSchema);
const settings = answerOf<KeptSeriesSettings>(seriesSettingsSchema);
const noise = answerOf<RoomNoise>(roomNoiseSchema);
const approval = answerOf<Approval>(approvalSchema);
const approvals = answerOf<{ approvals: readonly Approval[] }>(approvalListSchema);

/** The series of a work's pulls: is it steady, what it is measured by, good to print; and σ of the room. */
export function addSeriesRoutes(app: App, services: Services): void {
  app.get(
    '/api/works/:id/series',
    {
      schema: {
        tags,
        summary: 'Whether the pulls of a work are steady, and what good to print still lacks',
        params,
        response: { 200: series, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await readSeries(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.get(
    '/api/works/:id/series/measure',
    {
      schema: {
        tags,
        summary: 'Tolerance, the areas of lights, middles and darks, the reference, the best pull',
        params,
        response: { 200: settings, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await readSeriesSettings(services, request.params.id);
      return found.ok ? reply.send(found.value) : sendFailure(reply, found.error);
    },
  );

  app.patch(
    '/api/works/:id/series/measure',
    {
      schema: {
        tags,
        summary: 'Save what changed; where areas did, all pulls are read again',
        params,
        body: seriesSettingsSaveSchema,
        response: { 200: settings, ...saveRefusals(seriesSettingsSchema) },
      },
    },
    async (request, reply) => {
      const saved = await changeSeriesSettings(services, request.params.id, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.get(
    '/api/noise',
    {
      schema: {
        tags,
        summary: 'σ of one reading in this room, from sheets photographed twice',
        response: { 200: noise, ...refusals },
      },
    },
    async (_request, reply) => reply.send(await readRoomNoise(services)),
  );

  app.put(
    '/api/noise',
    {
      schema: {
        tags,
        summary: 'Type σ, to be used until sheets were photographed twice',
        body: roomNoiseSaveSchema,
        response: { 200: noise, ...saveRefusals(roomNoiseSchema) },
      },
    },
    async (request, reply) => {
      const saved = await typeRoomNoise(services, request.body);
      return saved.ok ? reply.send(saved.value) : sendRefusal(reply, saved.error);
    },
  );

  app.get(
    '/api/works/:id/approvals',
    {
      schema: {
        tags,
        summary: 'Good to print as it was given, newest first, withdrawn ones too',
        params,
        response: { 200: approvals, ...refusals },
      },
    },
    async (request, reply) => {
      const found = await listApprovals(services, request.params.id);
      return found.ok ? reply.send({ approvals: found.value }) : sendFailure(reply, found.error);
    },
  );

  app.post(
    '/api/works/:id/approvals',
    {
      schema: {
        tags,
        summary: 'Give good to print; the pull becomes the standard',
        params,
        body: approvalInputSchema,
        response: { 201: approval, ...refusals },
      },
    },
    async (request, reply) => {
      const given = await giveApproval(services, request.params.id, request.body);
      return given.ok ? reply.code(201).send(given.value) : sendFailure(reply, given.error);
    },
  );

  app.post(
    '/api/works/:id/approvals/:approval/no-longer-good',
    {
      schema: {
        tags,
        summary: 'Say that it is no longer good to print; answers with what depended on it',
        params: params.extend({ approval: idSchema }),
        body: withdrawalSchema,
        response: { 200: approval, ...refusals },
      },
    },
    async (request, reply) => {
      const { id, approval: given } = request.params;
      const withdrawn = await withdrawApproval(services, id, given, request.body);
      return withdrawn.ok ? reply.send(withdrawn.value) : sendFailure(reply, withdrawn.error);
    },
  );
}
