import type { Corners } from '../science/geometry/point.ts';
import type { WorkZone } from './work.ts';

/** What tones are to be read from: a kept photograph, and where a rectangle of known size lies on it. */
export interface ZoneTonesRequest {
  /** Id of a photograph that is attached to the work or to its stone. */
  readonly photograph: string;
  /** Photograph px, TL, TR, BR, BL; null: as they are attached. */
  readonly cornersPx: Corners | null;
  /** What the corners enclose; null: the work rectangle where there is one, else the stone. */
  readonly of: 'stone' | 'rectangle' | null;
}

/** The tone of one zone as it was read, for a person to accept. */
export interface ZoneTone {
  readonly zone: string;
  /** As it would stand in the work; null where it could not be read. */
  readonly tone: WorkZone['tone'];
  /** 95 % interval of the mean. */
  readonly mean: { readonly low: number; readonly high: number } | null;
  /** Why there is none; null where there is one. */
  readonly why: string | null;
}

/** The tones of a work's zones, read from one photograph. Nothing is kept of it until a person accepts. */
export interface ZoneTones {
  readonly photograph: string;
  readonly workVersion: number;
  /** Darkness of a full film, taken from the darkest connected places; null where there are none. */
  readonly solid: { readonly darkness: number; readonly low: number; readonly high: number } | null;
  /** One for each zone of the work, in its order. */
  readonly zones: readonly ZoneTone[];
  /** What to mind, in sentences. */
  readonly warnings: readonly string[];
}
