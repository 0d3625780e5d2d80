import { expect, it } from 'vitest';
import { hatchScale } from '../../records/hatchScale.ts';
import { hatchScaleStripSvg } from './hatchScaleStrip.ts';

it('covers in every step exactly what is stated beside it, with no line too thin to print', () => {
  const svg = hatchScaleStripSvg('#000');
  const steps = svg.split('<text x="0"').slice(1);
  expect(steps.length).toBe(hatchScale.length);
  for (const [index, { letter, coverage }] of hatchScale.entries()) {
    const step = steps[index]!;
    expect(step).toContain(`>${letter}</text>`);
    expect(step).toContain(`>${Math.round(coverage * 100)} %</text>`);
    const height = (tag: string) => Number(/ height="([\d.]+)"/.exec(tag)![1]);
    const lines = [...step.matchAll(/<rect [^>]*fill="#000"\/>/g)].map(([tag]) => height(tag));
    const frame = height(/<rect [^>]*fill="none"[^>]*>/.exec(step)![0]);
    expect(lines.reduce((sum, line) => sum + line, 0) / frame).toBeCloseTo(coverage, 3);
    for (const line of lines) expect(line).toBeGreaterThan(0.1);
  }
});
