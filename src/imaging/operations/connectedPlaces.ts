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
  for (let start = 0; start < mask.length; start++) {
    if (!mask[start] || seen[start]) continue;
    const pixels = [start];
    seen[start] = 1;
    for (let next = 0; next < pixels.length; next++) {
      const at = pixels[next]!;
      const x = at % width;
      const visit = (neighbour: number) => {
        if (!mask[neighbour] || seen[neighbour]) return;
        seen[neighbour] = 1;
        pixels.push(neighbour);
      };
      if (x > 0) visit(at - 1);
      if (x < width - 1) visit(at + 1);
      if (at >= width) visit(at - width);
      if (at < width * (height - 1)) visit(at + width);
    }
    places.push({ pixels });
  }
  return places;
}
