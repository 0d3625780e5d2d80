import { expect, it } from 'vitest';
import { roomQuestionSchema } from '../../../contract/roomQuestion.ts';
import { answerRoom } from '../../../studio/room/answerRoom.ts';
import { askTroubles } from '../asking/askTroubles.ts';
import { roomForms } from './roomForms.ts';

const typed: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  air: { ach: '6' },
  settle: {},
  vapour: { ml: '30', limit: '350', roomM3: '50', ach: '4' },
  lift: { width: '400', height: '300', thickness: '70' },
};

it.each(roomForms)('$kind: what is typed is a question that the server takes and answers', (form) => {
  const values = { ...form.start, fields: { ...form.start.fields, ...typed[form.kind] } };
  expect(askTroubles(form, values)).toEqual({ wrong: {}, missing: false });
  const question = form.question(values);
  expect(roomQuestionSchema.parse(question)).toEqual(question);
  const answer = answerRoom(question);
  expect(answer.value).toBeGreaterThan(0);
  expect(answer.words.at(-1)).toMatch(/Local codes.* come first/);
  expect(JSON.stringify(answer)).not.toMatch(/\bsafe\b/i);
});

it('covers every kind of question once', () => {
  const kinds = ['air', 'lift', 'settle', 'vapour'];
  expect(roomForms.map(({ kind }) => kind).toSorted()).toEqual(kinds);
});
