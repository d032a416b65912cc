import { html, nothing, svg, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { PlanKey, Point } from '../scene';
import { say } from '../words';

/** The plan as a small key: the ring, its openings, the zero mark, north up. */
export function planKey(plan: PlanKey, size: number, chosen: string | null, choose?: (opening: string) => void): TemplateResult {
  const xs = plan.outside.map(([x]) => x);
  const ys = plan.outside.map(([, y]) => y);
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const edge = 16;
  const k = (size - 2 * edge) / Math.max(east - west, north - south);
  const width = (east - west) * k + 2 * edge;
  const height = (north - south) * k + 2 * edge;
  const at = ([x, y]: Point): string => `${((x - west) * k + edge).toFixed(1)} ${((north - y) * k + edge).toFixed(1)}`;
  const closed = (points: readonly Point[]): string => `M${points.map(at).join('L')}Z`;

  return html`
    <svg class="plan" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${say('web.drawing.plan')}>
      <path class="ring" fill-rule="evenodd" d=${guard([plan.outside, plan.inside, size], () => closed(plan.outside) + closed(plan.inside))} />
      ${plan.openings.map(
        (opening) => svg`<path class="gap ${opening.name === chosen ? 'chosen' : ''}" d=${guard([opening, plan.outside, size], () => closed(opening.outline))}
          @click=${choose === undefined ? nothing : () => choose(opening.name)}><title>${opening.name}</title></path>`,
      )}
      ${plan.landings
        .filter((landing) => !landing.secondary)
        .map((landing) => {
          const [x, y] = at(landing.at).split(' ');
          return svg`<circle class="pole" cx=${x} cy=${y} r="1.8" />`;
        })}
      <path class="zero" d="M${at(plan.zero[0])}L${at(plan.zero[1])}" />
      <g class="north" transform="translate(${width - 9} 12)"><path d="M0 -9l4 9h-8z" /><text y="11" text-anchor="middle">${say('web.drawing.north')}</text></g>
    </svg>
  `;
}
