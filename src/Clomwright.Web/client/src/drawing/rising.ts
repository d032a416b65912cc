import { html, nothing, svg, type TemplateResult } from 'lit';
import { risenOn, type ForecastScene } from '../days-scene';
import type { Scene } from '../scene';
import { say } from '../words';
import { frameOf, path, round } from './frame';
import { hatches } from './hatches';
import { rulers } from './layers';

/** Writing in a lift lower than this would not be read, px; the ladder below says it. */
const leastHigh = 13;

/** The unrolled wall as it stands by the middle of the seasons on a day: lifts closed, the one that rises, those to come. */
export function risingWall(scene: Scene, forecast: ForecastScene, day: number, room: number): TemplateResult {
  const { view } = scene;
  const frame = frameOf(scene, view, room, 'whole');
  const [left, right] = [frame.x(0), frame.x(view.length)];
  return html`
    <svg class="unrolled water rising" width=${round(frame.width)} height=${round(frame.height)} role="img" aria-label=${say('web.days.rising-said', { day: forecast.days[day] ?? '' })}>
      ${hatches}
      <g class="wall">
        <path class="stem" d=${path(frame, view.stem)} /><path class="stem-stones" d=${path(frame, view.stem)} />
        <path class="wall-to-come" d=${path(frame, view.wall)} />
        <path class="floor" d="M${left - 10} ${round(frame.y(0))}H${right}" />
      </g>
      ${rulers(frame, scene, view)}
      ${forecast.lifts.map((lift) => {
        const [top, height] = [round(frame.y(lift.top)), round((lift.top - lift.bottom) * frame.k)];
        const risen = round(height * risenOn(lift, day));
        const text = say('web.days.lift', { n: lift.number });
        return svg`<g data-lift=${lift.number}>
          <rect class="to-come" x=${left} y=${top} width=${round(right - left)} height=${height} />
          ${risen > 0 ? svg`<rect class=${risen >= height ? 'laid closed' : 'laid under-way'} x=${left} y=${round(top + height - risen)} width=${round(right - left)} height=${risen} />` : nothing}
          ${height >= leastHigh ? svg`<text class="water-text" x=${left + 8} y=${round(top + height / 2 + 4)}>${text} · ${lift.limitText}</text>` : nothing}
        </g>`;
      })}
      <g class="openings">${view.openings.map((opening) => svg`<path class="hole" d=${path(frame, opening.outlines)} /><path class="leaf" d=${path(frame, opening.outlines)} />`)}</g>
    </svg>
  `;
}
