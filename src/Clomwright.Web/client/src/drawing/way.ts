import { svg, type TemplateResult } from 'lit';
import type { ArrivedScene, WayCard } from '../arrived-scene';
import { path, round, type Frame } from './frame';
import { builtInLayer, builtInShape, thinned, wallBody } from './layers';
import { namePlaces, openingShape } from './openings';
import { pierLayer } from './piers';

const above = 6;
const below = 34;

/** A piece of the unrolled wall from inside as one way would leave it, the opening as it is drawn in dashes over it. */
export function wayPicture(scene: ArrivedScene, way: WayCard, wide: number): TemplateResult<2> {
  const [left, right] = scene.across;
  const k = wide / (right - left);
  const { view } = way;
  const high = above + (scene.top - scene.bottom) * k + below;
  const frame: Frame = { k, width: wide, height: high, x: (metres) => (metres - left) * k, y: (metres) => above + (scene.top - metres) * k };
  const names = namePlaces(frame, view);
  const foot = round(frame.y(scene.bottom)) + 6;
  // A width is written where the whole pier is seen.
  const whole = { ...view, piers: view.piers.filter((pier) => pier.boxes.every(([from, to]) => from >= left && to <= right)) };
  const parts = [...new Set([...view.niches, ...view.embeds].map((part) => part.name))];
  return svg`
    <svg class="way-picture" width=${round(wide)} height=${round(high)} viewBox="0 0 ${round(wide)} ${round(high)}" role="img" aria-label=${way.what}>
      ${wallBody(frame, view)} ${builtInLayer(frame, view)} ${pierLayer(frame, whole, way.piers)}
      ${parts.map((name) => builtInShape(frame, view, name))}
      ${view.openings.map((opening) => svg`<g class="opening ${opening.name === scene.opening ? 'chosen' : ''}">${openingShape(frame, opening, names.get(opening.name))}</g>`)}
      <path class="as-drawn" d=${path(frame, scene.drawn)} />
      <g class="rulers" aria-hidden="true">
        <path d="M0 ${foot}H${round(wide)}" />
        ${view.ticks.map((tick) => svg`<path d="M${round(frame.x(tick.at))} ${foot}v${tick.major ? 9 : 5}" />`)}
        ${thinned([...view.ticks].sort((a, b) => a.at - b.at), k).map((tick) => svg`<text x=${round(frame.x(tick.at))} y=${foot + 22} text-anchor="middle">${tick.label}</text>`)}
      </g>
    </svg>
  `;
}
