// The house in the round, as the server sends it: bodies of triangles and lines, nothing left to compute. m east, m north, m up.

export interface RoundScene {
  name: string;
  revision: number;
  says: string;
  ring: number;
  bottom: number;
  top: number;
  middle: [number, number, number];
  radius: number;
  ground: number;
  floor: [number, number][];
  bodies: RoundBody[];
  deck: string;
  kinds: { key: RoundKind; name: string }[];
  noSun: string | null;
}

export type RoundKind = 'wall' | 'stem' | 'frames' | 'headers' | 'embeds' | 'tees' | 'beam' | 'roof';

export interface RoundBody {
  name: string;
  label: string;
  kind: RoundKind;
  setAt: number | null;
  points: string;
  normals: string;
  triangles: string;
  places: string;
  edges: string;
  joints: string;
}

export interface RoundSun {
  says: string;
  toward: [number, number, number] | null;
  patches: string;
  edges: string;
}

/** Where the eye is: outside, over, or in the room. */
export type Stand = 'outside' | 'above' | 'inside';

/** What lies on the wall. */
export type Skin = 'built' | 'stress' | 'water';

/** How the house is cut open. */
export type Cut = 'whole' | 'upright' | 'level';

function bytes(base64: string): ArrayBuffer {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)).buffer;
}

export function floats(base64: string): Float32Array {
  return new Float32Array(bytes(base64));
}

export function wholes(base64: string): Uint32Array {
  return new Uint32Array(bytes(base64));
}

export function signed(base64: string): Int8Array {
  return new Int8Array(bytes(base64));
}
