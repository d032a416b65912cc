// What the wall carries, as the server sends it.
import type { Face, Figure, FindingLine, Point, Totals } from './scene';

export interface StressAnswer {
  scene: StressScene | null;
  trouble: string | null;
}

/** A hatching, and from how many hundredths on it is laid. */
export interface StressBand {
  says: string;
  from: number;
}

/** Stress at the middles of stacks, column by column from the foot up, a byte each, in hundredths; base 64. */
export interface StressField {
  x: number[];
  y: number[];
  pressed: string;
  pulled: string;
}

/** What changes while an opening is moved. */
export interface StressPicture {
  field: StressField;
  piers: { pier: string; used: string; at: Point[] }[];
  tightest: { what: string; standing: string; used: string; share: number; governs: string }[];
}

export interface LiveAnswer {
  revision: number;
  /** Null where the wall cannot be followed there; <code>notFollowed</code> says why. */
  picture: StressPicture | null;
  notFollowed: string | null;
}

export interface StressScene {
  notChecked: string | null;
  face: Face;
  revision: number;
  bands: StressBand[];
  tension: StressBand;
  picture: StressPicture | null;
  zones: string[];
  trust: string[];
  findings: FindingLine[];
  totals: Totals;
}

/** The search for the push at which the house falls: how far it is, then what was found. */
export interface FallAnswer {
  share: number;
  scene: FallScene | null;
  trouble: string | null;
}

export interface FallScene {
  notChecked: string | null;
  figures: Figure[];
  findings: FindingLine[];
  totals: Totals;
}
