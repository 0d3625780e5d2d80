import { failure } from '../foundation/failure.ts';
import { fail, ok, type Result } from '../foundation/result.ts';
import type { Corners, Point } from '../science/geometry/point.ts';

/** Reads `300x400`: width and height in mm. */
export function readSize(text: string): Result<Point> {
  const match = /^\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*$/i.exec(text);
  if (match) return ok([Number(match[1]), Number(match[2])]);
  return fail(
    failure('size-invalid', { given: text, why: 'it is not two numbers with an x between' }, '--size'),
  );
}

/** Reads four points, `"x,y x,y x,y x,y"`, in photograph px; null where none were given. */
export function readCorners(text: string | undefined, photo: 'stone' | 'proof'): Result<Corners | null> {
  if (text === undefined) return ok(null);
  const points = text
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part))));
  const whole =
    points.length === 4 && points.every((point) => point.length === 2 && point.every(Number.isFinite));
  if (!whole) return fail(failure('corners-malformed', { photo }, `--${photo}-corners`));
  return ok(points.map(([x, y]): Point => [x!, y!]) as unknown as Corners);
}
