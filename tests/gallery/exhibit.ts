/** A chart of the gallery, drawn from a fixed record. */
export interface ChartExhibit {
  readonly name: string;
  readonly svg: () => string;
}

/** A sheet of the gallery, made from a fixed record; it has just so many pages. */
export interface SheetExhibit {
  readonly name: string;
  readonly pages: number;
  readonly pdf: () => Promise<Uint8Array>;
}
