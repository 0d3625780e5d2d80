import './PatchPicture.css';
import type { CSSProperties, ReactNode } from 'react';
import { patchMark } from '../../paper/charts/patchMark.ts';
import type { Point } from '../../science/geometry/point.ts';
import { patchName } from '../../studio/trials/places/patchName.ts';
import { told } from '../words/told.ts';

export interface ShownPatch {
  readonly id: string;
  readonly polygonMm: readonly Point[];
  /** Where it stands, counted from the head and from the left; null: in no row. */
  readonly row: number | null;
  readonly column: number | null;
  /** What stands on it beside its mark. */
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
      {patches.map(({ id, row, column, polygonMm, letter, words }) => {
        const place = placeOf(polygonMm, sizeMm);
        const name = told(patchName({ id, row, column }));
        const shown = (
          <>
            <Mark patch={{ id, row, column }} />
            {letter !== '' && <b>{letter}</b>}
          </>
        );
        return onPick ? (
          <button
            key={id}
            type="button"
            style={place}
            aria-pressed={picked.has(id)}
            onClick={() => onPick(id)}
          >
            {shown}
            <span className="unseen">{`${name}: ${words}`}</span>
          </button>
        ) : (
          <span key={id} className="patch-letter" style={place} title={`${name}: ${words}`}>
            {shown}
          </span>
        );
      })}
    </fieldset>
  );
}

/** The mark that stands beside a patch on the stone. */
function Mark({ patch }: { patch: Parameters<typeof patchMark>[0] }) {
  const mark = patchMark(patch);
  if (!mark) return null;
  const { path, width, height } = mark;
  return (
    <svg
      className="patch-mark"
      viewBox={`-1 -1 ${width + 2} ${height + 2}`}
      width={width + 2}
      height={height + 2}
      aria-hidden="true"
    >
      <path d={path} />
    </svg>
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
