// The water of a wall over the days, as the server sends it; the page only looks up a day.
import type { Face, Figure } from './scene';

export interface WaterAnswer {
  share: number;
  scene: WaterScene | null;
  trouble: string | null;
}

export interface WaterScene {
  notChecked: string | null;
  face: Face;
  days: string[];
  says: string[];
  lifts: WaterLift[];
  bays: { name: string; faces: string; boxes: (readonly [left: number, right: number])[] }[];
  values: { text: string; band: number }[];
  bands: string[];
  figures: Figure[];
  warnings: string[];
}

export interface WaterLift {
  number: string;
  bottom: number;
  top: number;
  shown: number | null;
  laid: string;
  next: string;
  keys: string;
  settles: string;
  cells: WaterCell[];
}

export interface WaterCell {
  from: number;
  /** Day by day a character: whole hundredths above '0'. */
  water: string;
  firm: number | null;
  dry: number | null;
  unkeyed: number | null;
}

export type WaterWord = 'wet' | 'firm' | 'dry';

/** What a cell is on a day; null where it is not laid yet. */
export function cellOn(scene: WaterScene, lift: WaterLift, bay: number, day: number): { text: string; band: number; word: WaterWord; unkeyed: boolean } | null {
  const cell = lift.cells[bay];
  if (cell === undefined || lift.shown === null || day < lift.shown) return null;
  const at = Math.min(Math.max(day - cell.from, 0), cell.water.length - 1);
  const value = scene.values[cell.water.charCodeAt(at) - 48];
  if (value === undefined) return null;
  const word = cell.dry !== null && day >= cell.dry ? 'dry' : cell.firm !== null && day >= cell.firm ? 'firm' : 'wet';
  const covered = scene.lifts.some((other) => other.bottom >= lift.top && other.shown !== null && day >= other.shown);
  return { ...value, word, unkeyed: cell.unkeyed !== null && day >= cell.unkeyed && !covered };
}
