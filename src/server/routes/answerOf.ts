import type { z } from 'zod';

/** A schema as the answer of a route, sent as the record's own type says: records are immutable, and so are their lists. */
export function answerOf<Answer>(schema: z.ZodType<Answer>): z.ZodType<Answer, Answer> {
  return schema as z.ZodType<Answer, Answer>;
}
