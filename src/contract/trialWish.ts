import { z } from 'zod';
import { type TrialWish, trialBlocks, trialLayouts } from '../records/trialDesign.ts';

const names = z
  .array(z.string().trim().min(1).max(60))
  .min(1)
  .max(24)
  .refine((levels) => new Set(levels).size === levels.length, 'the same level stands there twice');

const factor = z.object({ name: z.string().trim().min(1).max(60), levels: names });

const scatter = z.object({
  stone: z.number().min(0).max(1),
  strip: z.number().min(0).max(1),
  patch: z.number().positive().max(1),
});

/** A trial as a printer asks for it; what is left out: one stone, no repeats, patches as large as they fit. */
export const trialWishSchema = z
  .object({
    title: z.string().trim().max(120).default('Test stone'),
    stone: z.object({ widthMm: z.number().min(60).max(3000), heightMm: z.number().min(60).max(3000) }),
    stones: z.int().min(1).max(24).default(1),
    whole: factor.nullable().default(null),
    sub: factor,
    layout: z.enum(trialLayouts).default('split-plot'),
    blocks: z.enum(trialBlocks).default('head-tail'),
    perStone: factor.nullable().default(null),
    cameraPixels: z.number().min(200).max(100_000).nullable().default(null),
    patchRepeats: z.int().min(1).max(12).default(1),
    stripRepeats: z.int().min(1).max(6).default(1),
    control: z.string().nullable().default(null),
    patchMm: z.number().min(5).max(200).nullable().default(null),
    gutterMm: z.number().min(2).max(60).default(6),
    stripGutterMm: z.number().min(2).max(100).default(12),
    border: z
      .object({ sidesMm: z.number().min(5).max(200), endsMm: z.number().min(5).max(200) })
      .default({ sidesMm: 15, endsMm: 25 }),
    seed: z.int().min(0).max(4_294_967_295).default(1),
    wanted: z.number().positive().max(1).nullable().default(null),
    scatter: scatter.nullable().default(null),
  })
  .superRefine(({ whole, sub, perStone, control, stones, layout }, context) => {
    const levels = [...(whole?.levels ?? []), ...sub.levels, ...(perStone?.levels ?? [])];
    if (perStone !== null && stones % perStone.levels.length !== 0)
      context.addIssue({
        code: 'custom',
        path: ['stones'],
        message: `${perStone.name} has ${perStone.levels.length} levels: take that many stones, or a multiple`,
      });
    if (perStone !== null && [whole?.name, sub.name].includes(perStone.name))
      context.addIssue({
        code: 'custom',
        path: ['perStone', 'name'],
        message: 'two treatments have one name',
      });
    if (layout === 'row-column' && (whole?.levels.length ?? 1) * sub.levels.length < 2)
      context.addIssue({
        code: 'custom',
        path: ['sub', 'levels'],
        message: 'rows and columns need two combinations at least',
      });
    if (control !== null && !levels.includes(control))
      context.addIssue({ code: 'custom', path: ['control'], message: 'the control is none of the levels' });
    if (whole !== null && whole.name === sub.name)
      context.addIssue({ code: 'custom', path: ['whole', 'name'], message: 'both treatments have one name' });
  }) satisfies z.ZodType<TrialWish>;
