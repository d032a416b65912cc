// When a job would be done, as the server sends it. Days count from the first of work; the page only looks one up.
import type { BlankCard } from './earth-scene';
import type { Figure } from './scene';

export interface DaysScene {
  blanks: BlankCard[];
  missing: string | null;
}

export interface DaysAnswer {
  share: number;
  scene: ForecastScene | null;
  trouble: string | null;
}

export interface ForecastScene {
  notChecked: string | null;
  figures: Figure[];
  notes: string[];
  rows: BandRow[];
  last: number;
  weeks: { day: number; label: string }[];
  lifts: RisingLift[];
  days: string[];
  says: string[];
  week: WeekView | null;
}

export interface BandRow {
  key: string;
  name: string;
  early: number | null;
  half: number | null;
  late: number | null;
  earlyText: string;
  halfText: string;
  lateText: string;
  isLift: boolean;
}

export interface RisingLift {
  number: string;
  bottom: number;
  top: number;
  topText: string;
  from: number | null;
  shown: number | null;
  byDrying: number;
  limit: 'people' | 'drying';
  limitText: string;
  waits: string;
  band: string;
}

export interface WeekView {
  days: string[];
  rows: { name: string; cells: string[] }[];
  note: string;
  clashes: string[];
}

export interface ChoicesAnswer {
  share: number;
  scene: { notChecked: string | null; ways: string[][]; weeks: string[]; note: string } | null;
  trouble: string | null;
}

/** How much of a lift stands on a day, 0 to 1. */
export function risenOn(lift: RisingLift, day: number): number {
  if (lift.shown !== null && day >= lift.shown) return 1;
  if (lift.from === null || day <= lift.from) return 0;
  return lift.shown === null ? 0 : (day - lift.from) / (lift.shown - lift.from);
}
