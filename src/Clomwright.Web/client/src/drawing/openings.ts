import { svg, type TemplateResult } from 'lit';
import type { FaceView, OpeningShape } from '../scene';
import { path, round, type Frame } from './frame';

const letterWidth = 6.4;
const row = 15;
/** How far the letters of a name stand above an opening's foot, and how tall they are, px. */
const nameFoot = 8;
const nameTall = 9;

/** Where an opening's name is written: in the hole lying so far above its foot, or standing, or below it in one of a few rows so that names do not touch. */
export type NamePlace = { way: 'lying'; above: number } | { way: 'standing' } | { way: 'below'; row: number };

export function namePlaces(frame: Frame, view: FaceView): Map<string, NamePlace> {
  const places = new Map<string, NamePlace>();
  const rows: number[] = [];
  const shapes = [...view.openings].sort((a, b) => a.foot[0] - b.foot[0]);
  for (const shape of shapes) {
    const long = shape.name.length * letterWidth + 8;
    const [wide, high] = size(frame, shape);
    // A round opening is wide enough in its middle.
    const above = isNarrowAtFoot(frame, shape, wide) ? (high - nameTall) / 2 : nameFoot;
    if (long < wide) places.set(shape.name, { way: 'lying', above });
    else if (long < high) places.set(shape.name, { way: 'standing' });
    else {
      const left = frame.x(shape.foot[0]) - long / 2;
      let free = rows.findIndex((end) => end < left);
      if (free < 0) free = rows.length;
      rows[free] = left + long;
      places.set(shape.name, { way: 'below', row: free });
    }
  }
  return places;
}

/** The opening's own drawing, at its place in the scene. */
export function openingShape(frame: Frame, shape: OpeningShape, place: NamePlace | undefined): TemplateResult<2> {
  const d = path(frame, shape.outlines);
  return svg`
    <path class="hole" d=${d} />
    <path class="header" d=${path(frame, shape.header)} />
    <path class="header-grain" d=${path(frame, shape.header)} />
    <path class="leaf" d=${d} />
    ${openingName(frame, shape, place)}
  `;
}

function openingName(frame: Frame, shape: OpeningShape, place: NamePlace | undefined): TemplateResult<2> {
  const x = round(frame.x(shape.foot[0]));
  const y = round(frame.y(shape.foot[1]));
  const name = shape.name;
  if (place?.way === 'standing') return svg`<text class="name" transform="translate(${x} ${y - nameFoot}) rotate(-90)" dy="0.33em">${name}</text>`;
  const under = place?.way === 'below' ? y + row * (place.row + 1) : y - (place?.above ?? nameFoot);
  return svg`<text class="name" x=${x} y=${under} text-anchor="middle">${name}</text>`;
}

/** Whether an opening is narrower where a name by its foot would stand than where it is widest, px. */
function isNarrowAtFoot(frame: Frame, shape: OpeningShape, wide: number): boolean {
  const corners = shape.outlines[0] ?? [];
  const height = shape.foot[1] + nameFoot / frame.k;
  const xs = corners.flatMap(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] ?? [x, y];
    return y < height !== nextY < height ? [x + ((height - y) / (nextY - y)) * (nextX - x)] : [];
  });
  return (Math.max(...xs) - Math.min(...xs)) * frame.k < 0.95 * wide;
}

function size(frame: Frame, shape: OpeningShape): [wide: number, high: number] {
  const xs = (shape.outlines[0] ?? []).map(([x]) => x);
  const ys = (shape.outlines[0] ?? []).map(([, y]) => y);
  return [(Math.max(...xs) - Math.min(...xs)) * frame.k, (Math.max(...ys) - Math.min(...ys)) * frame.k];
}
