/** A phone or tablet that was let in with a code; it is kept for good, so that logs can be read. */
export interface Device {
  readonly id: string;
  /** What logs call it; no two devices ever share one. */
  readonly name: string;
  readonly letInAt: string;
  /** To the hour. */
  readonly lastSeenAt: string;
  /** Since when it is let in no more; null while it is. */
  readonly shutOutAt: string | null;
}

/** A device as it is listed. */
export interface DeviceEntry extends Device {
  /** `lapsed`: not seen for so long that it must be let in again. */
  readonly standing: 'let-in' | 'lapsed' | 'shut-out';
}

/** Who asks: this machine itself, a device that was let in, or nobody known. */
export interface Caller {
  readonly kind: 'this-machine' | 'device' | 'stranger';
  readonly device: Pick<Device, 'id' | 'name'> | null;
}

/** A QR code as a picture: a square of `size` by `size` units, `path` (SVG) what is dark. */
export interface CodePicture {
  readonly size: number;
  readonly path: string;
}

/** The code that lets one device in. */
export interface LettingInCode {
  /** Six digits. */
  readonly code: string;
  readonly secondsLeft: number;
  /** Where a phone types it; with the code already typed for whoever scans the picture. */
  readonly address: string;
  readonly picture: CodePicture;
}

/** What became of the last code that was asked for. */
export interface LettingInState {
  /** `spoiled`: tried wrongly too often. */
  readonly state: 'none' | 'open' | 'used' | 'over' | 'spoiled';
  /** Whole seconds; 0 unless it is open. */
  readonly secondsLeft: number;
  /** The name of the device that used it. */
  readonly device: string | null;
}

/** The certificate that phones are shown. */
export interface NetworkCertificate {
  /** SHA-256 of the whole certificate, pairs of hexadecimal digits parted by colons. */
  readonly fingerprint: string;
  readonly until: string;
  /** True where this program made it, so that no browser knows it. */
  readonly own: boolean;
}

/** How this machine can be reached by phones. */
export interface NetworkState {
  /** False as long as nobody asked for it at the start: only this machine is answered. */
  readonly open: boolean;
  /** Best guess first; empty while there is no network. */
  readonly addresses: readonly { readonly address: string; readonly picture: CodePicture }[];
  /** null over plain http. */
  readonly certificate: NetworkCertificate | null;
}
