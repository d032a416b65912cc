// What the wall carries, as the server sends it.
import type { Face, FindingLine, Point, Totals } from './scene';

export interface StressAnswer {
  scene: StressScene | null;
  trouble: string | null;
}

export interface StressBand {
  says: string;
  pieces: Point[][];
}

export interface StressScene {
  notChecked: string | null;
  face: Face;
  bands: StressBand[];
  tension: StressBand;
  piers: { pier: string; used: string; at: Point[] }[];
  tightest: { what: string; standing: string; used: string; share: number; governs: string }[];
  zones: string[];
  trust: string[];
  findings: FindingLine[];
  totals: Totals;
}
