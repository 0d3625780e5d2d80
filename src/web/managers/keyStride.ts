/** How far an arrow key pushes what is in hand: by one, or by ten, mm on a stone and px on a photograph. */
export type Stride = 'fine' | 'coarse';

export const strides: Readonly<Record<Stride, number>> = { fine: 1, coarse: 10 };

/** The key that goes from fine to coarse and back wherever something is pushed. */
export const strideKey = '0';

let chosen: Stride = 'fine';
const listeners = new Set<() => void>();

/** Which of the two is chosen: one choice for all boards of a page, made in words or by a key. */
export const keyStride = {
  current: (): Stride => chosen,
  change(): void {
    chosen = chosen === 'fine' ? 'coarse' : 'fine';
    for (const hear of listeners) hear();
  },
  listen(hear: () => void): () => void {
    listeners.add(hear);
    return () => listeners.delete(hear);
  },
};
