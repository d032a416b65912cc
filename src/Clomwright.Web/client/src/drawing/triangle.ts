import { html, nothing, svg, type TemplateResult } from 'lit';
import type { TriangleView } from '../earth-scene';
import type { Point } from '../scene';
import { say } from '../words';
import { round } from './frame';

const room = { left: 82, right: 38, top: 30, bottom: 46 } as const;

/** Of an equilateral triangle, over its side. */
const rise = 0.8660254;
const lineHeight = 12.5;

/** Fields too small for their names, and the height at which the name stands left of the triangle. */
const beside: ReadonlyMap<string, number> = new Map([
  ['sand', 0.035],
  ['loamy-sand', 0.125],
  ['sandy-clay', 0.48],
]);

/** The triangle of sand, silt and clay: twelve fields, the field of this soil hatched and the soil as a ringed spot with its name. */
export function soilTriangle(view: TriangleView, width: number): TemplateResult {
  const side = width - room.left - room.right;
  const height = room.top + side * rise + room.bottom;
  const x = (p: Point): number => round(room.left + p[0] * side);
  const y = (p: Point): number => round(room.top + (1 - p[1]) * side * rise);
  const path = (outline: readonly Point[]): string => `M${outline.map((p) => `${x(p)} ${y(p)}`).join('L')}Z`;
  const said = say('web.earth.triangle-said', { named: view.named, shares: view.shares ?? '' });
  return html`
    <svg class="soil-triangle" width=${round(width)} height=${round(height)} role="img" aria-label=${said}>
      <defs>
        <pattern id="this-class" width="7" height="7" patternUnits="userSpaceOnUse"><path class="this-class-line" d="M-1 1l2-2M-1 8l9-9M6 8l2-2" /></pattern>
      </defs>
      ${view.fields.map((field) => svg`<path class="field" d=${path(field.outline)} />`)}
      ${view.fields
        .filter((field) => field.key === view.class)
        .map((field) => svg`<path class="field on" d=${path(field.outline)} /><path class="field-hatch" d=${path(field.outline)} />`)}
      ${view.fields.map((field) => {
        const outside = beside.get(field.key);
        if (outside !== undefined) {
          const [at, edge]: [Point, Point] = [[outside / 2, outside], field.middle];
          return svg`<path class="field-leader" d="M${round(x(at) - 12)} ${y(at)}L${x(edge)} ${y(edge)}" />
            <text class=${field.key === view.class ? 'field-name on' : 'field-name'} x=${round(x(at) - 15)} y=${y(at) + 4} text-anchor="end">${field.name}</text>`;
        }
        // Under the spot itself a name cannot be read; it stands in the line below the drawing.
        if (view.soil !== null && field.key === view.class && Math.abs(x(view.soil) - x(field.middle)) < 42 && Math.abs(y(view.soil) - y(field.middle)) < 18) return nothing;
        const lines = broken(field.name);
        const top = y(field.middle) - ((lines.length - 1) * lineHeight) / 2 + 4;
        return svg`<text class=${field.key === view.class ? 'field-name on' : 'field-name'} text-anchor="middle">${lines.map(
          (line, i) => svg`<tspan x=${x(field.middle)} y=${round(top + i * lineHeight)}>${line}</tspan>`,
        )}</text>`;
      })}
      <path class="triangle-edge" d=${path([[0, 0], [1, 0], [0.5, 1]])} />
      ${scale(x, y)}
      ${
        view.soil === null
          ? nothing
          : svg`<g class="soil-spot" transform="translate(${x(view.soil)} ${y(view.soil)})"><circle class="halo" r="10" /><circle r="8" /><circle class="dot" r="3.4" /></g>`
      }
    </svg>
  `;
}

/** Tenths along the three sides, each written on the side that its lines leave from. */
function scale(x: (p: Point) => number, y: (p: Point) => number): TemplateResult<2> {
  const tenths = [0.2, 0.4, 0.6, 0.8];
  return svg`
    <g class="triangle-scale" aria-hidden="true">
      ${tenths.map((t) => {
        const clay: Point = [t / 2, t];
        const sand: Point = [1 - t, 0];
        const silt: Point = [1 - (1 - t) / 2, 1 - t];
        const mark = String(Math.round(t * 100));
        return svg`
          <path d="M${x(clay)} ${y(clay)}h-6M${x(sand)} ${y(sand)}l3 5.2M${x(silt)} ${y(silt)}l3 -5.2" />
          <text x=${x(clay) - 9} y=${y(clay) + 4} text-anchor="end">${mark}</text>
          <text x=${x(sand) + 5} y=${y(sand) + 17} text-anchor="middle">${mark}</text>
          <text x=${x(silt) + 6} y=${y(silt) - 7}>${mark}</text>`;
      })}
      <text class="corner" x=${x([0.5, 1])} y=${y([0.5, 1]) - 10} text-anchor="middle">${say('web.earth.clay')}</text>
      <text class="corner" x=${x([0, 0]) - 4} y=${y([0, 0]) + 36} text-anchor="middle">${say('web.earth.sand')}</text>
      <text class="corner" x=${x([1, 0]) + 4} y=${y([1, 0]) + 36} text-anchor="middle">${say('web.earth.silt')}</text>
    </g>
  `;
}

/** A name over as many lines as it has words, short ones together. */
function broken(name: string): string[] {
  const words = name.split(' ');
  return words.length < 3 ? (name.length > 10 ? words : [name]) : [`${words[0]} ${words[1]}`, words.slice(2).join(' ')];
}
