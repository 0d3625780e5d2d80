import type { CodePicture } from '../../../records/device.ts';

/** A QR code, black on white whatever the page is, so that every camera reads it. */
export function CodeSquare({ picture: { size, path }, label }: { picture: CodePicture; label: string }) {
  return (
    <svg className="code-square" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <path d={`M0 0H${size}V${size}H0Z`} fill="#fff" />
      <path d={path} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
}
