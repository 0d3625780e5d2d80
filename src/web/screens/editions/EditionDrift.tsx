import { useEffect, useRef, useState } from 'react';
import { editionDriftSvg } from '../../../paper/charts/editionDrift.ts';
import type { ToneDrift } from '../../../studio/editions/drift.ts';
import { svgInWords } from '../../../words/inWords.ts';

/** Wider, the chart would only be emptier, px. */
const widest = 860;

/** The chart of drift, drawn to the width that the page gives it, so that its letters keep their size. */
export function EditionDrift({ drift }: { drift: readonly ToneDrift[] }) {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry!.contentRect.width)));
    observer.observe(place.current!);
    return () => observer.disconnect();
  }, []);
  const svg =
    width === null
      ? ''
      : svgInWords(editionDriftSvg(drift, { width: Math.min(Math.max(width, 280), widest) }));
  return (
    <div
      ref={place}
      className="edition-chart"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: our own picture, its words made safe where it is drawn
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
