import type { RoundScene, Skin } from '../round-scene';
import type { StressScene } from '../stress-scene';
import { cellOn, type WaterScene } from '../water-scene';
import { say } from '../words';
import type { Touched } from './stage';

/** How wet or how pressed the wall is where it was touched, in words; empty where that is not on it. */
export function valueAt({ place }: Touched, scene: RoundScene | null, skin: Skin, water: WaterScene | null, day: number, stress: StressScene | null): string {
  if (place === null || scene === null) return '';
  const height = scene.bottom + place.up * (scene.top - scene.bottom);
  if (skin === 'water' && water !== null) {
    const lift = water.lifts.find((one) => height <= one.top) ?? water.lifts.at(-1);
    const bay = water.bays.findIndex((one) => one.boxes.some(([from, to]) => place.along * scene.ring >= from && place.along * scene.ring <= to));
    const cell = lift === undefined || bay < 0 ? null : cellOn(water, lift, bay, day);
    return lift === undefined || cell === null ? say('web.water.not-laid') : say('web.round.water-here', { lift: lift.number, bay: water.bays[bay]?.name ?? '', water: cell.text, word: say(`web.water.${cell.word}`) });
  }
  const field = stress?.picture?.field;
  if (skin !== 'stress' || field === undefined) return '';
  const along = place.along * scene.ring;
  const nearest = (all: readonly number[], at: number) => all.reduce((best, one, i) => (Math.abs(one - at) < Math.abs((all[best] ?? 0) - at) ? i : best), 0);
  const rows = field.y.slice(1, -1);
  const i = nearest(field.x, along) * rows.length + nearest(rows, height);
  return say('web.round.stress-here', { pressed: `${atob(field.pressed).charCodeAt(i)} %` });
}
