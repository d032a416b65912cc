// What the server sends to be drawn. Lengths in metres; every word and every written number arrives as text.

import type { ComfortScene } from './comfort-scene';
import type { DaysScene } from './days-scene';
import type { EarthScene, EarthTest } from './earth-scene';
import type { GroundScene } from './form-scene';
import type { RoofScene } from './roof-scene';

export type Face = 'inside' | 'outside';
export type Point = readonly [x: number, y: number];

/** Left, right, bottom, top. */
export type Box = readonly [x0: number, x1: number, y0: number, y1: number];

export type FieldName = 'station' | 'sill' | 'width' | 'height';

/** A knob of the roof, as the server names it. */
export type KnobName = string;

/** How a finding stands; the order is the order of attention. */
export type Standing = 'short' | 'unchecked' | 'judgement' | 'met' | 'none';

/** What is looked at; only that is sent. */
export type Sight = Face | 'ground' | 'roof' | 'earth' | 'days' | 'comfort';

export interface HouseCard {
  key: string;
  name: string;
  file: string;
  notes: string | null;
  line: string | null;
  trouble: string | null;
  plan: PlanKey | null;
}

/** A state, or one sentence why there is none; neither where the house is what the page shows. */
export interface HouseAnswer {
  state: HouseState | null;
  trouble: string | null;
}

export interface HouseState {
  key: string;
  name: string;
  file: string;
  revision: number;
  saved: boolean;
  savedLine: string;
  fileDiffers: boolean;
  canUndo: boolean;
  canRedo: boolean;
  refusal: Refusal | null;
  /** The wall; null when something else is looked at. */
  scene: Scene | null;
  /** The roof; null when something else is looked at. */
  roof: RoofScene | null;
  /** The earth; null when something else is looked at. */
  earth: EarthScene | null;
  /** Who works; null when something else is looked at. */
  days: DaysScene | null;
  /** Warmth, damp and sun; null when something else is looked at. */
  comfort: ComfortScene | null;
  /** The plan, what lies under the wall, and the rules; null when something else is looked at. */
  ground: GroundScene | null;
}

export interface Refusal {
  opening: string | null;
  field: FieldName | null;
  knob: KnobName | null;
  /** A blank of the earth page. */
  blank: string | null;
  /** Of a row of blanks written together, the one it is about; null for all of them. */
  within: string | null;
  sentence: string;
}

/** What the rules say, and what is wrong in the description. */
export interface Said {
  findings: FindingLine[];
  totals: Totals;
  diagnostics: DiagnosticLine[];
}

export interface Scene extends Said {
  /** Something is in hand: findings that are computed are those of a moment ago. */
  inHand: boolean;
  /** The number under which this was sent. */
  edition: number;
  /** The number of the scene that is kept, to which only what is otherwise was sent; null where all is here. */
  since: number | null;
  /** For every finding its place among those kept, or -1 - k for number k of those here; null where all are here. */
  order: number[] | null;
  /** Length of the ring along the inside face. */
  ring: number;
  bottom: number;
  top: number;
  heights: Tick[];
  lifts: LiftLine[];
  /** Where the wall is seen from. */
  face: Face;
  view: FaceView;
  openings: OpeningCard[];
  /** Niches and what is built in. */
  parts: BuiltInCard[];
  piers: PierLine[];
  figures: Figure[];
  plan: PlanKey;
}

export interface Tick {
  at: number;
  label: string | null;
  major: boolean;
}

export interface FaceView {
  length: number;
  /** Where equally spaced stations of the inside face, from zero to the whole ring, are found on this view. */
  along: number[];
  ticks: Tick[];
  wall: Point[][];
  stem: Point[][];
  bondBeam: Point[][];
  liftLines: Point[][];
  grade: number | null;
  openings: OpeningShape[];
  niches: NamedShape[];
  embeds: EmbedMark[];
  landings: LandingMark[];
  tees: Point[][];
  piers: PierShape[];
  /** Where a crew may improvise. */
  free: Box[];
  freeSays: string;
  marks: FindingMark[];
}

/** A niche or something built in, and how far it may be dragged. */
export interface BuiltInCard {
  name: string;
  path: string;
  kind: string;
  label: string;
  /** Null where it could not be placed. */
  station: number | null;
  sill: number;
  sillMin: number;
  sillMax: number;
}

export interface NamedShape {
  name: string;
  label: string;
  outlines: Point[][];
  /** Cut from the face that is looked at. */
  near: boolean;
}

export interface OpeningShape {
  name: string;
  outlines: Point[][];
  header: Point[][];
  /** The middle of the sill. */
  foot: Point;
}

export interface EmbedMark {
  name: string;
  address: string;
  kind: string;
  label: string;
  at: Point;
  near: boolean;
}

export interface LandingMark {
  name: string;
  x: number;
  secondary: boolean;
}

export interface PierShape {
  address: string;
  boxes: Box[];
}

export interface FindingMark {
  id: string;
  boxes: Box[];
}

export interface OpeningCard {
  name: string;
  path: string;
  label: string;
  kind: string;
  station: number;
  sill: number;
  sillMin: number;
  sillMax: number;
  /** It is moved along the wall only; its sill is typed. */
  alongOnly: boolean;
  fields: Record<FieldName, string>;
  trouble: string | null;
}

export interface PierLine {
  address: string;
  label: string;
  width: string;
  standing: Standing;
}

export interface FindingLine {
  id: string;
  number: number | null;
  standing: Standing;
  title: string;
  subject: string;
  sentence: string;
  by: string;
  notes: string[];
  /** Said of what was computed of the house, not of where everything stands alone. */
  computed: boolean;
}

export interface Totals {
  met: number;
  fallsShort: number;
  unchecked: number;
  judgement: number;
  line: string;
}

export interface LiftLine {
  number: string;
  bottom: number;
  top: number;
  topText: string;
  volume: string;
  batches: string | null;
  rise: string | null;
}

export interface Figure {
  label: string;
  value: string;
}

export interface PlanKey {
  inside: Point[];
  outside: Point[];
  zero: readonly [Point, Point];
  openings: { name: string; outline: Point[] }[];
  landings: { at: Point; secondary: boolean }[];
}

export interface DiagnosticLine {
  path: string;
  sentence: string;
  error: boolean;
}

export interface SheetCard {
  key: string;
  title: string;
  size: string;
  group: string;
  /** Of the paper, mm. */
  width: number;
  height: number;
  /** Another one than was handed out last. */
  changed: boolean;
}

export interface PapersState {
  name: string;
  note: string;
  paper: string;
  sizes: string[];
  sheets: SheetCard[];
}

/** What the page may ask to be changed. */
export type Change =
  | { kind: 'move'; opening: string; station: number; sill: number | null }
  | { kind: 'nudge'; opening: string; along: number; up: number; large: boolean }
  | { kind: 'write'; opening: string; field: FieldName; text: string }
  | { kind: 'take-way'; opening: string; way: string }
  | { kind: 'turn'; knob: KnobName; at: number }
  | { kind: 'step'; knob: KnobName; steps: number }
  | { kind: 'set'; knob: KnobName; text: string }
  | { kind: 'enter'; blank: string; text: string }
  | { kind: 'add-test'; test: EarthTest; texts: Record<string, string>; blank: string }
  | { kind: 'remove-test'; test: EarthTest; index: number; blank: string }
  | { kind: 'add-part'; path: string; way: string; texts: Record<string, string>; blank: string }
  | { kind: 'take-out'; path: string; blank: string }
  | { kind: 'shift'; path: string; by: number; blank: string }
  | { kind: 'move-point'; point: number; east: number; north: number }
  | { kind: 'nudge-point'; point: number; east: number; north: number; large: boolean }
  | { kind: 'add-point'; point: number }
  | { kind: 'take-point-out'; point: number };
