import './PatchPicture.css';
import type { CSSProperties, ReactNode } from 'react';
import type { Point } from '../../science/geometry/point.ts';

export interface ShownPatch {
  readonly id: string;
  readonly polygonMm: readonly Point[];
  /** What stands on it. */
  readonly letter: string;
  /** What it is, read out. */
  readonly words: string;
  /** How it is drawn: a plain outline unless told. */
  readonly kind?: 'lost' | 'weak' | 'held' | 'filled' | 'other';
}

/**
 * A test stone seen from above with its patches where they lie, over its straightened photograph where there is one.
 * Patches are buttons, so that a key or a finger can pick them.
 */
export function PatchPicture({
  sizeMm,
  patches,
  picked,
  onPick,
  picture,
  label,
}: {
  sizeMm: Point;
  patches: readonly ShownPatch[];
  picked: ReadonlySet<string>;
  /** null: nothing is picked here. */
  onPick: ((id: string) => void) | null;
  picture?: ReactNode;
  label: string;
}) {
  const [width, height] = sizeMm;
  return (
    <fieldset
      className="patch-picture"
      style={{ aspectRatio: `${width} / ${height}`, maxWidth: `calc(82vh * ${width / height})` }}
    >
      <legend className="unseen">{label}</legend>
      <div className="patch-picture-below">{picture}</div>
      <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
        {patches.map(({ id, polygonMm, kind }) => (
          <polygon
            key={id}
            points={polygonMm.map((point) => point.join(',')).join(' ')}
            className={`patch-${kind ?? 'plain'}${picked.has(id) ? ' patch-picked' : ''}`}
            vectorEffect="non-scaling-stroke"
          />
        ))}
      </svg>
      {patches.map(({ id, polygonMm, letter, words }) => {
        const place = placeOf(polygonMm, sizeMm);
        return onPick ? (
          <button
            key={id}
            type="button"
            style={place}
            aria-pressed={picked.has(id)}
            onClick={() => onPick(id)}
          >
            <b>{letter}</b>
            <span className="unseen">{`${id}: ${words}`}</span>
          </button>
        ) : (
          <span key={id} className="patch-letter" style={place} title={`${id}: ${words}`}>
            <b>{letter}</b>
          </span>
        );
      })}
    </fieldset>
  );
}

function placeOf(polygonMm: readonly Point[], [width, height]: Point): CSSProperties {
  const xs = polygonMm.map(([x]) => x);
  const ys = polygonMm.map(([, y]) => y);
  const share = (value: number, whole: number) => `${(100 * value) / whole}%`;
  return {
    left: share(Math.min(...xs), width),
    top: share(Math.min(...ys), height),
    width: share(Math.max(...xs) - Math.min(...xs), width),
    height: share(Math.max(...ys) - Math.min(...ys), height),
  };
}
