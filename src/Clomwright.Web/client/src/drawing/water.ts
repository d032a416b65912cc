import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Scene } from '../scene';
import { cellOn, type WaterScene } from '../water-scene';
import { say } from '../words';
import { frameOf, path, round, type Nearness } from './frame';
import { hatches } from './hatches';
import { rulers } from './layers';

/** A stretch narrower or lower than this carries no writing, px; the table below says it. */
const leastWide = 27;
const leastHigh = 13;
const bothHigh = 36;
const wideForBoth = 58;

/** The unrolled wall as it stands on a day, every lift of every stretch hatched by its water, with the value and the word. */
export function waterWall(scene: Scene, water: WaterScene, day: number, room: number, nearness: Nearness): TemplateResult {
  const { view } = scene;
  const frame = frameOf(scene, view, room, nearness);
  const [left, right] = [frame.x(0), frame.x(view.length)];
  return html`
    <svg class="unrolled water" width=${round(frame.width)} height=${round(frame.height)} role="img" aria-label=${say('web.water.said', { day: water.days[day] ?? '' })}>
      ${hatches} ${waterHatches}
      <g class="wall">
        <path class="stem" d=${path(frame, view.stem)} /><path class="stem-stones" d=${path(frame, view.stem)} />
        <path class="wall-to-come" d=${path(frame, view.wall)} />
        <path class="floor" d="M${left - 10} ${round(frame.y(0))}H${right}" />
      </g>
      ${rulers(frame, scene, view)}
      ${water.lifts.map((lift, i) => {
        const [top, height] = [round(frame.y(lift.top)), round((lift.top - lift.bottom) * frame.k)];
        const stands = lift.shown !== null && day >= lift.shown;
        return svg`<g class="water-lift" data-lift=${i + 1}>
          <rect class=${stands ? 'laid' : 'to-come'} x=${left} y=${top} width=${round(right - left)} height=${height} />
          ${
            stands
              ? water.bays.map((bay, b) => {
                  const cell = cellOn(water, lift, b, day);
                  if (cell === null) return nothing;
                  return bay.boxes.map(([from, to]) => {
                    const [x, width] = [round(frame.x(from)), round((to - from) * frame.k)];
                    const [middle, centre] = [round(x + width / 2), top + height / 2];
                    const written = width >= leastWide && height >= leastHigh;
                    const both = written && height >= bothHigh;
                    const word = say(`web.water.${cell.word}`);
                    const line = !both && width >= wideForBoth ? say('web.water.cell', { water: cell.text, word }) : cell.text;
                    return svg`
                      <rect class="cell band-${cell.band} ${cell.word}" x=${x} y=${top} width=${width} height=${height}><title>${bay.name}: ${cell.text} ${word}</title></rect>
                      <rect class="cell-hatch" fill="url(#water-${cell.band})" x=${x} y=${top} width=${width} height=${height} />
                      ${cell.unkeyed ? svg`<path class="unkeyed" d="M${x + 2} ${top + 2.5}h${round(Math.max(0, width - 4))}" />` : nothing}
                      ${written ? svg`<text class="water-text" x=${middle} y=${round(centre + (both ? -2 : 4))} text-anchor="middle">${line}</text>` : nothing}
                      ${both ? svg`<text class="water-text word" x=${middle} y=${round(centre + 11)} text-anchor="middle">${word}</text>` : nothing}`;
                  });
                })
              : nothing
          }
        </g>`;
      })}
      <g class="openings">${view.openings.map((opening) => svg`<path class="hole" d=${path(frame, opening.outlines)} /><path class="leaf" d=${path(frame, opening.outlines)} />`)}</g>
    </svg>
  `;
}

/** From sparse dots for dry to dense lines for wet; each can be told from its neighbours without colour. */
export const waterHatches = svg`
  <defs>
    <pattern id="water-0" width="12" height="12" patternUnits="userSpaceOnUse"></pattern>
    <pattern id="water-1" width="11" height="11" patternUnits="userSpaceOnUse"><circle class="water-dot" cx="3" cy="3" r="0.9" /><circle class="water-dot" cx="8.5" cy="8.5" r="0.9" /></pattern>
    <pattern id="water-2" width="7" height="7" patternUnits="userSpaceOnUse"><circle class="water-dot" cx="2" cy="2" r="1.1" /><circle class="water-dot" cx="5.5" cy="5.5" r="1.1" /></pattern>
    <pattern id="water-3" width="10" height="9" patternUnits="userSpaceOnUse"><path class="water-line" d="M0 4.5h6" /></pattern>
    <pattern id="water-4" width="10" height="6" patternUnits="userSpaceOnUse"><path class="water-line" d="M0 3h10" /></pattern>
    <pattern id="water-5" width="12" height="5" patternUnits="userSpaceOnUse"><path class="water-line thick" d="M0 2.5q3 -2.4 6 0t6 0" /></pattern>
  </defs>
`;

/** What each hatch means. */
export function waterLegend(water: WaterScene): TemplateResult {
  return html`
    <dl class="water-legend">
      ${water.bands.map(
        (band, i) => html`<div>
          <dt><svg width="34" height="18" aria-hidden="true"><rect class="cell band-${i}" x="0.5" y="0.5" width="33" height="17" /><rect class="cell-hatch" fill="url(#water-${i})" x="0.5" y="0.5" width="33" height="17" /></svg></dt>
          <dd>${band}</dd>
        </div>`,
      )}
    </dl>
  `;
}
