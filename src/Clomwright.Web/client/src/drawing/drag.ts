import type { FaceView } from '../scene';
import { stationOfX, xOfStation } from './frame';

/** Up and down begins only after this many pixels, so that moving along keeps the sill where it is. */
const stick = 12;

/** Whatever is moved along the wall and up it. */
export interface Movable {
  readonly name: string;
  readonly station: number;
  readonly sill: number;
  readonly sillMin: number;
  readonly sillMax: number;
  readonly alongOnly?: boolean;
}

/** One opening, niche or thing built in held by the pointer: where it was taken, and where its foot should be now. */
export interface Held {
  readonly opening: string;
  readonly gesture: string;
  readonly pointer: number;
  readonly from: { readonly px: number; readonly py: number; readonly x: number; readonly sill: number };
  /** Where the pointer was last seen, px. */
  at: { readonly px: number; readonly py: number };
  moved: boolean;
  /** On the view, m. */
  x: number;
  /** From the finished floor, m. */
  sill: number;
}

export function take(card: Movable, view: FaceView, ring: number, event: PointerEvent, gesture: string): Held {
  const x = xOfStation(view, ring, card.station);
  return {
    opening: card.name,
    gesture,
    pointer: event.pointerId,
    from: { px: event.clientX, py: event.clientY, x, sill: card.sill },
    at: { px: event.clientX, py: event.clientY },
    moved: false,
    x,
    sill: card.sill,
  };
}

/** Follows the pointer; true when the opening really moves. */
export function follow(held: Held, card: Movable, view: FaceView, k: number, event: PointerEvent): boolean {
  const dx = event.clientX - held.from.px;
  const dy = event.clientY - held.from.py;
  if ((!held.moved && Math.hypot(dx, dy) < 4) || (held.at.px === event.clientX && held.at.py === event.clientY)) return false;
  held.at = { px: event.clientX, py: event.clientY };
  held.moved = true;
  held.x = Math.min(Math.max(held.from.x + dx / k, 0), view.length);
  if (!card.alongOnly) {
    const past = Math.abs(dy) <= stick ? 0 : dy - Math.sign(dy) * stick;
    held.sill = Math.min(Math.max(held.from.sill - past / k, card.sillMin), card.sillMax);
  }
  return true;
}

/** The move to ask for; the server sets it on the builder's own grid. A sill that was not moved is left out. */
export function asked(held: Held, view: FaceView, ring: number): { station: number; sill: number | null } {
  return { station: stationOfX(view, ring, held.x), sill: held.sill === held.from.sill ? null : held.sill };
}
