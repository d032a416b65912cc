import type { StressField, StressPicture } from '../stress-scene';
import { round, type Frame } from './frame';

type Values = Uint8Array<ArrayBuffer>;
type Corner = readonly [x: number, y: number, value: number];

const decoded = new WeakMap<StressField, { pressed: Values; pulled: Values }>();
const drawn = new WeakMap<StressPicture, { frame: string; paths: Map<string, string> }>();

/** Path of the area of a picture where pressure, or tension, is at or over a level in hundredths. The ring closes at both ends; the wall's outline cuts it off. */
export function areaPath(frame: Frame, picture: StressPicture, length: number, of: 'pressed' | 'pulled', level: number): string {
  const at = `${frame.k}/${frame.height}`;
  let known = drawn.get(picture);
  if (known?.frame !== at) drawn.set(picture, (known = { frame: at, paths: new Map() }));
  const key = `${of}/${level}`;
  let path = known.paths.get(key);
  if (path === undefined) known.paths.set(key, (path = area(frame, picture.field, values(picture.field)[of], length, level)));
  return path;
}

function values(field: StressField): { pressed: Values; pulled: Values } {
  let known = decoded.get(field);
  if (known === undefined) decoded.set(field, (known = { pressed: bytes(field.pressed), pulled: bytes(field.pulled) }));
  return known;
}

function bytes(base64: string): Values {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}

/** Between the middles of four neighbouring stacks the number is taken to change evenly, so that bands have smooth edges. */
function area(frame: Frame, field: StressField, value: Values, length: number, level: number): string {
  const [count, rows] = [field.x.length, field.y.length - 2];
  const column = (i: number) => (i + count) % count;
  const x = (i: number) => frame.x((field.x[column(i)] ?? 0) + (i < 0 ? -length : i >= count ? length : 0));
  const v = (i: number, row: number) => value[column(i) * rows + Math.min(Math.max(row, 0), rows - 1)] ?? 0;
  let d = '';
  for (let row = -1; row < rows; row++) {
    const [low, high] = [round(frame.y(field.y[row + 1] ?? 0)), round(frame.y(field.y[row + 2] ?? 0))];
    for (let i = -1; i < count; i++) {
      const corners: Corner[] = [[x(i), low, v(i, row)], [x(i + 1), low, v(i + 1, row)], [x(i + 1), high, v(i + 1, row + 1)], [x(i), high, v(i, row + 1)]];
      const over = corners.filter((corner) => corner[2] >= level).length;
      if (over === 4) {
        // A run of whole pieces is one.
        let to = i + 1;
        while (to < count && v(to + 1, row) >= level && v(to + 1, row + 1) >= level) to++;
        d += `M${round(x(i))} ${low}H${round(x(to))}V${high}H${round(x(i))}Z`;
        i = to - 1;
      } else if (over > 0) d += piece(corners, level);
    }
  }
  return d;
}

function piece(corners: readonly Corner[], level: number): string {
  let d = '';
  corners.forEach(([x, y, value], n) => {
    const [nextX, nextY, next] = corners[(n + 1) % corners.length] ?? [x, y, value];
    if (value >= level) d += `${d === '' ? 'M' : 'L'}${round(x)} ${round(y)}`;
    if (value >= level !== next >= level) {
      const share = (level - value) / (next - value);
      d += `${d === '' ? 'M' : 'L'}${round(x + share * (nextX - x))} ${round(y + share * (nextY - y))}`;
    }
  });
  return `${d}Z`;
}
