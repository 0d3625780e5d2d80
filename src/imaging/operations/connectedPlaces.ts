/** Pixels of a mask that hang together, as indices into it. */
export interface ConnectedPlace {
  readonly pixels: number[];
}

/**
 * Finds the connected places of a mask, neighbours sharing a side.
 * @param mask `width × height`, 0 or not 0.
 * @returns in the order of their first pixel.
 */
export function connectedPlaces(mask: Uint8Array, width: number, height: number): ConnectedPlace[] {
  const seen = new Uint8Array(mask.length);
  const places: ConnectedPlace[] = [];
  const last = width * (height - 1);
  for (let start = 0; start < mask.length; start++) {
    if (!mask[start] || seen[start]) continue;
    const pixels = [start];
    seen[start] = 1;
    for (let next = 0; next < pixels.length; next++) {
      const at = pixels[next]!;
      const x = at % width;
      const neighbours = [
        x > 0 ? at - 1 : at,
        x < width - 1 ? at + 1 : at,
        at >= width ? at - width : at,
        at < last ? at + width : at,
      ];
      for (let k = 0; k < 4; k++) {
        const neighbour = neighbours[k]!;
        if (!mask[neighbour] || seen[neighbour]) continue;
        seen[neighbour] = 1;
        pixels.push(neighbour);
      }
    }
    places.push({ pixels });
  }
  return places;
}
