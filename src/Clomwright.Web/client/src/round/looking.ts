import type { Stand } from '../round-scene';
import type { Look } from './stage';

/** The ways one can go by a button or a key. */
export const ways = ['left', 'right', 'up', 'down', 'near', 'far', 'again'] as const;

export type Way = (typeof ways)[number];

const turnBy = 15;
const tiltBy = 8;
const nearBy = 1.2;
const nearest = 1.1;
const farthest = 8;

/** Where one stands at first. */
export const stands: Record<Stand, { bearing: number; tilt: number; away: number }> = {
  outside: { bearing: 205, tilt: 20, away: 2.5 },
  above: { bearing: 180, tilt: 80, away: 3.1 },
  inside: { bearing: 0, tilt: -8, away: 3 },
};

/** Where one is after a step. */
export function gone({ stand, bearing, tilt, away }: Look, way: Way): Partial<Look> {
  // From outside the house is turned, from the room the head.
  const sense = stand === 'inside' ? 1 : -1;
  switch (way) {
    case 'again':
      return stands[stand];
    case 'left':
    case 'right':
      return { bearing: round(bearing + (way === 'right' ? 1 : -1) * sense * turnBy) };
    case 'up':
    case 'down':
      return { tilt: tilted(stand, tilt + (way === 'up' ? tiltBy : -tiltBy)) };
    default:
      return { away: Math.min(Math.max(way === 'near' ? away / nearBy : away * nearBy, nearest), farthest) };
  }
}

/** Where one is after the picture was pulled so far, px. */
export function pulled({ stand, bearing, tilt }: Look, dx: number, dy: number): Partial<Look> {
  const inside = stand === 'inside';
  return { bearing: round(bearing + (inside ? -0.2 : 0.4) * dx), tilt: tilted(stand, tilt + (inside ? 0.2 : 0.3) * dy) };
}

/** The way that a key goes. */
export function wayOf({ key, shiftKey }: KeyboardEvent): Way | undefined {
  return ({ ArrowLeft: 'left', ArrowRight: 'right', ArrowUp: shiftKey ? 'near' : 'up', ArrowDown: shiftKey ? 'far' : 'down', '+': 'near', '=': 'near', '-': 'far', Home: 'again' } as const)[key];
}

/** Bearing that faces the eye, in the steps that it is turned by. */
export function facing({ stand, bearing }: Look): number {
  return (Math.round((stand === 'inside' ? bearing + 180 : bearing) / turnBy) * turnBy) % 360;
}

function round(bearing: number): number {
  return (bearing + 360) % 360;
}

function tilted(stand: Stand, tilt: number): number {
  const [low, high] = stand === 'inside' ? [-50, 60] : [-5, 89];
  return Math.min(Math.max(tilt, low), high);
}
