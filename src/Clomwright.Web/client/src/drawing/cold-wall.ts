import { html, svg, type TemplateResult } from 'lit';
import type { ColdWall, ComfortScene, SunHour } from '../comfort-scene';
import type { Point } from '../scene';

const edge = { left: 4, right: 4, top: 6, bottom: 26 } as const;

/** The inside of the wall laid flat: damp hatched, temperatures written, and the sun of the hour chosen. */
export function coldWall(scene: ComfortScene, wall: ColdWall, sun: SunHour | null, room: number, label: string): TemplateResult {
  const [length, top] = scene.wallSize;
  const k = Math.max((room - edge.left - edge.right) / length, 56);
  const width = edge.left + edge.right + length * k;
  const height = edge.top + edge.bottom + top * k;
  const x = (m: number) => +(edge.left + m * k).toFixed(1);
  const y = (m: number) => +(edge.top + (top - m) * k).toFixed(1);
  const closed = (points: readonly Point[]) => `M${points.map(([a, b]) => `${x(a)} ${y(b)}`).join('L')}Z`;
  const level = (least: string): string => {
    const [dx, dy] = [length / wall.columns, top / wall.rows];
    let d = '';
    for (let c = 0; c < wall.columns; c++)
      for (let r = 0; r < wall.rows; r++) {
        const from = r;
        while (r < wall.rows && wall.levels[c * wall.rows + r]! >= least) r++;
        if (r > from) d += `M${x(c * dx)} ${y(from * dy)}H${x((c + 1) * dx)}V${y(r * dy)}H${x(c * dx)}Z`;
      }
    return d;
  };
  return html`
    <svg class="cold-wall" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${label}>
      <defs>
        <pattern id="damp-1" width="9" height="9" patternUnits="userSpaceOnUse"><path class="damp-line" d="M-1 10L10 -1M-1 1L1 -1M8 10L10 8" /></pattern>
        <pattern id="damp-2" width="6" height="6" patternUnits="userSpaceOnUse"><path class="damp-line" d="M-1 -1L7 7M-1 5L1 7M5 -1L7 1" /></pattern>
        <pattern id="sun-on" width="5" height="5" patternUnits="userSpaceOnUse"><path class="sun-line" d="M0 2.5h5" /></pattern>
      </defs>
      <rect class="cold-face" x=${x(0)} y=${y(top)} width=${x(length) - x(0)} height=${y(0) - y(top)} />
      <path class="damp" d=${level('1')} fill="url(#damp-1)" />
      <path class="damp" d=${level('2')} fill="url(#damp-2)" />
      ${(sun?.onWall ?? []).map((patch) => svg`<path class="sun-patch" d=${closed(patch)} fill="url(#sun-on)" />`)}
      ${scene.holes.map((hole) => svg`<path class="cold-hole" d=${closed(hole)} />`)}
      ${wall.marks.map((mark) => svg`<text class="cold-mark" x=${Math.min(Math.max(x(mark.x), 24), width - 24)} y=${Math.min(y(mark.y) + 4, y(0) - 4)} text-anchor="middle">${mark.text}</text>`)}
      ${scene.winds.map((wind) => svg`<text class="cold-wind" x=${Math.min(Math.max(x(wind.x), 10), width - 10)} y=${height - 7} text-anchor="middle">${wind.text}</text>`)}
    </svg>
  `;
}

/** The floor from above with the sun of an hour. */
export function sunPlan(scene: ComfortScene, hour: SunHour, size: number, label: string): TemplateResult {
  const xs = scene.plan.outside.map(([a]) => a);
  const ys = scene.plan.outside.map(([, b]) => b);
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const room = 14;
  const k = (size - 2 * room) / Math.max(east - west, north - south);
  const width = (east - west) * k + 2 * room;
  const height = (north - south) * k + 2 * room;
  const at = ([a, b]: Point) => `${((a - west) * k + room).toFixed(1)} ${((north - b) * k + room).toFixed(1)}`;
  const closed = (points: readonly Point[]) => `M${points.map(at).join('L')}Z`;
  return html`
    <svg class="sun-plan" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${label}>
      <defs>
        <pattern id="sun-floor" width="5" height="5" patternUnits="userSpaceOnUse"><path class="sun-line" d="M0 2.5h5" /></pattern>
      </defs>
      <path class="sun-room" d=${closed(scene.plan.inside)} />
      ${hour.patches.map((patch) => svg`<path class="sun-patch" d=${closed(patch)} fill="url(#sun-floor)" />`)}
      <path class="sun-ring" fill-rule="evenodd" d="${closed(scene.plan.outside)}${closed(scene.plan.inside)}" />
      ${scene.plan.openings.map((opening) => svg`<path class="sun-gap" d=${closed(opening.outline)}><title>${opening.name}</title></path>`)}
    </svg>
  `;
}
