// The roof as the server sends it. Lengths in metres; every word and every written number arrives as text.
import type { Figure, Point, Said, Standing } from './scene';

export interface RoofScene extends Said {
  kind: 'reciprocal' | 'radial' | 'shed' | 'gable' | 'none';
  /** Why nothing holds the roof, if nothing does. */
  trouble: string | null;
  knobs: KnobCard[];
  plan: RoofPlanView;
  section: RoofSectionView | null;
  figures: Figure[];
  stages: StageLine[];
  governs: string | null;
  tightest: TightLine[];
  /** The findings of the whole house, counted. */
  house: string;
}

export interface KnobCard {
  key: string;
  label: string;
  text: string;
  /** In steps, between two marks where the value is none of them. */
  now: number;
  least: number;
  most: number;
  choices: { value: string; label: string }[];
}

export interface StageLine {
  key: string;
  name: string;
  crossing: string | null;
  least: string | null;
  opens: boolean;
  plate: string | null;
  bending: string | null;
  allowed: string | null;
  use: string | null;
  standing: Standing;
  notChecked: string | null;
}

export interface TightLine {
  id: string;
  standing: Standing;
  what: string;
  used: string;
  /** How much of the bar is filled. */
  share: number;
}

export interface RoofPlanView {
  inside: Point[];
  outside: Point[];
  bondBeam: Point[][];
  eave: Point[] | null;
  openings: { name: string; outline: Point[] }[];
  ring: Point[] | null;
  poles: PoleShape[];
  over: Point[][];
  landings: LandingShape[];
  marks: { id: string; at: Point }[];
  /** West, east, south, north. */
  extent: readonly [number, number, number, number];
}

export interface PoleShape {
  number: string;
  label: string;
  outline: Point[];
  butt: Point;
  standing: Standing;
  tightest: boolean;
}

export interface LandingShape {
  at: Point;
  secondary: boolean;
  margin: string | null;
  labelAt: Point;
  standing: Standing;
}

export interface RoofSectionView {
  label: string;
  pole: Point[];
  wall: Point[];
  bondBeam: Point[] | null;
  layers: { name: string; kind: string; outline: Point[]; pin: Point }[];
  edgeBoard: Point[] | null;
  /** Along, up, diameter. */
  crossings: (readonly [number, number, number])[];
  support: Point[];
  notes: { kind: string; text: string; from: Point; to: Point }[];
  /** Left, right, bottom, top. */
  extent: readonly [number, number, number, number];
}
