import { useEffect, useRef, useState } from 'react';
import type { DrawnSeries } from '../../../paper/charts/toneLineScale.ts';
import { toneLinesSvg, toneLinesWords } from '../../../paper/charts/toneLines.ts';
import { svgInWords, textInWords } from '../../../words/inWords.ts';

/** The three tone lines, drawn to the room that the page gives them. */
export function ToneLines({ series }: { series: DrawnSeries }) {
  const place = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<readonly [number, number] | null>(null);
  useEffect(() => {
    const observer = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      setSize([Math.floor(width), Math.floor(height)]);
    });
    observer.observe(place.current!);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={place} className="tone-lines">
      {size && (
        <img
          src={`data:image/svg+xml,${encodeURIComponent(svgInWords(toneLinesSvg(series, { width: size[0], height: Math.max(size[1], 300) })))}`}
          alt={textInWords(toneLinesWords(series))}
        />
      )}
    </div>
  );
}
