import type { Box, FaceView, Point, Scene } from '../scene';

/** Room round the drawing, in pixels. */
export const margin = { left: 58, right: 14, top: 44, bottom: 40 } as const;

/** The whole ring across the page, or near enough to read every inch and slid sideways. */
export type Nearness = 'whole' | 'near';

/** Smaller than this nothing can be read, so that even the whole ring is slid sideways: a desk, and a phone held in the hand. */
const leastAtDesk = 30;
const leastInHand = 62;
const leastNear = 96;

/** Where metres of the unrolled wall fall on the page. */
export interface Frame {
  readonly k: number;
  readonly width: number;
  readonly height: number;
  x(metres: number): number;
  y(metres: number): number;
}

export function frameOf(scene: Scene, view: FaceView, room: number, nearness: Nearness): Frame {
  const fitting = (room - margin.left - margin.right) / view.length;
  const k = Math.max(fitting * (nearness === 'near' ? 2 : 1), nearness === 'near' ? leastNear : room < 700 ? leastInHand : leastAtDesk);
  return {
    k,
    width: margin.left + margin.right + view.length * k,
    height: margin.top + margin.bottom + (scene.top - scene.bottom) * k,
    x: (metres) => margin.left + metres * k,
    y: (metres) => margin.top + (scene.top - metres) * k,
  };
}

/** SVG path of closed outlines. */
export function path(frame: Frame, outlines: readonly (readonly Point[])[], closed = true): string {
  let d = '';
  for (const outline of outlines) {
    let step = 'M';
    for (const [x, y] of outline) {
      d += `${step}${round(frame.x(x))} ${round(frame.y(y))}`;
      step = 'L';
    }
    if (closed) d += 'Z';
  }
  return d;
}

export interface Rectangle {
  x: number;
  y: number;
  width: number;
  height: number;
}

export function rectangle(frame: Frame, [x0, x1, y0, y1]: Box): Rectangle {
  return {
    x: round(frame.x(x0)),
    y: round(frame.y(y1)),
    width: round((x1 - x0) * frame.k),
    height: round((y1 - y0) * frame.k),
  };
}

/** Where a station is found on a view. */
export function xOfStation(view: FaceView, ring: number, station: number): number {
  const at = (wrapped(station, ring) / ring) * (view.along.length - 1);
  const i = Math.min(Math.floor(at), view.along.length - 2);
  const a = view.along[i] ?? 0;
  const b = view.along[i + 1] ?? a;
  return a + (b - a) * (at - i);
}

/** The station found at a place on a view. */
export function stationOfX(view: FaceView, ring: number, x: number): number {
  const last = view.along.length - 1;
  const rising = (view.along[last] ?? 0) > (view.along[0] ?? 0);
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((view.along[middle] ?? 0) <= x === rising) low = middle;
    else high = middle;
  }
  const a = view.along[low] ?? 0;
  const b = view.along[high] ?? a;
  const share = a === b ? 0 : (x - a) / (b - a);
  return ((low + Math.min(Math.max(share, 0), 1)) / last) * ring;
}

/** Which way stations run on a view: 1 to the right, -1 to the left. */
export function direction(view: FaceView): 1 | -1 {
  return (view.along.at(-1) ?? 0) >= (view.along[0] ?? 0) ? 1 : -1;
}

function wrapped(station: number, ring: number): number {
  return ((station % ring) + ring) % ring;
}

export function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
