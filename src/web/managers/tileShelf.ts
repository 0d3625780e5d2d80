import { tileAddress } from '../client/photographs.ts';
import type { TilePlace } from './tilePyramid.ts';

/** Tiles of one photograph as they come in; the oldest go first when there are many. */
export class TileShelf {
  readonly #photograph: string;
  readonly #arrived: () => void;
  readonly #tiles = new Map<string, HTMLImageElement>();
  readonly #most: number;

  /** `arrived` is called for each tile that has come in. */
  constructor(photograph: string, arrived: () => void, most = 64) {
    this.#photograph = photograph;
    this.#arrived = arrived;
    this.#most = most;
  }

  /** The tile's picture if it is here; else it is sent for and null returned. A tile that fails is not asked for again. */
  take(place: TilePlace): HTMLImageElement | null {
    const address = tileAddress(this.#photograph, place.level, place.column, place.row);
    const held = this.#tiles.get(address);
    if (held) return held.complete && held.naturalWidth > 0 ? held : null;
    const picture = new Image();
    picture.onload = this.#arrived;
    picture.src = address;
    this.#tiles.set(address, picture);
    const oldest = this.#tiles.keys().next().value;
    if (this.#tiles.size > this.#most && oldest !== undefined) this.#tiles.delete(oldest);
    return null;
  }
}
