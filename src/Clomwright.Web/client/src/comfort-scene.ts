// Warmth, damp and sun as the server sends them: text and outlines, nothing left to compute.
import type { Figure, PlanKey, Point } from './scene';

export interface ComfortScene {
  figures: Figure[];
  notChecked: string | null;
  bars: { part: string; name: string; text: string; share: number }[];
  walls: ColdWall[];
  wallSize: [number, number];
  holes: Point[][];
  winds: ColdMark[];
  plan: PlanKey;
  seasons: { name: string; hours: SunHour[] }[];
  noSun: string | null;
  parts: string[][];
}

export interface ColdWall {
  key: string;
  name: string;
  says: string;
  columns: number;
  rows: number;
  levels: string;
  marks: ColdMark[];
  table: string[][];
}

export interface ColdMark {
  x: number;
  y: number;
  text: string;
}

export interface SunHour {
  name: string;
  says: string;
  patches: Point[][];
  onWall: Point[][];
}

export interface ComfortFixes {
  notChecked: string | null;
  lines: string[][];
}
