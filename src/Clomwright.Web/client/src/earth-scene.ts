// The earth as the server sends it. Every word and every written number arrives as text.
import type { TightLine } from './roof-scene';
import type { Figure, Point, Said } from './scene';

export type EarthTest = 'bar' | 'prism' | 'brick' | 'drop' | 'block';

export interface EarthScene extends Said {
  jar: JarView;
  triangle: TriangleView;
  soil: Figure[];
  handTests: Figure[];
  recipe: BlankCard[];
  carried: BlankCard[];
  recipes: { key: 'written' | 'target'; title: string; lines: Figure[]; missing: string | null }[];
  next: { key: string; what: string; because: string };
  bars: TestTable;
  barLimits: Figure[];
  prisms: TestTable;
  bricks: TestTable;
  drops: TestTable;
  blocks: TestTable;
  strength: { tag: 'measured' | 'assumed'; word: string; lines: Figure[]; why: string; byRule: Figure[]; missing: string[] };
  tightest: TightLine[];
  /** The findings of the whole house, counted. */
  house: string;
}

export interface BlankCard {
  key: string;
  name: string;
  label: string;
  text: string;
  choices: { value: string; label: string }[];
}

export interface JarView {
  blanks: BlankCard[];
  layers: { kind: 'sand' | 'silt' | 'clay'; bottom: number; top: number; text: string }[];
  column: number | null;
  label: string;
  times: Figure[];
  missing: string[];
  temperature: string | null;
}

/** Points are [right, up] in shares of one: sand at [0, 0], silt at [1, 0], clay at [0.5, 1]. */
export interface TriangleView {
  fields: { key: string; name: string; outline: Point[]; middle: Point }[];
  soil: Point | null;
  class: string | null;
  named: string;
  shares: string | null;
  source: string;
}

export interface TestTable {
  rows: TestRow[];
  new: BlankCard[];
}

export interface TestRow {
  title: string;
  blanks: BlankCard[];
  reads: string;
  counts: boolean;
  notes: string[];
}
