/** The papers that sheets are made for. */
export const papers = ['a4', 'a3', 'letter'] as const;

export type Paper = (typeof papers)[number];
