import { html, nothing, svg, type TemplateResult } from 'lit';
import type { FaceView } from '../scene';
import { rectangle, round, type Frame } from './frame';

/** Something found otherwise than drawn: where, and both numbers. */
export interface FoundMark {
  line: string;
  at: (readonly [x: number, y: number])[];
}

const pattern = svg`<pattern id="free-zone" width="14" height="14" patternUnits="userSpaceOnUse"><path class="free-sign" d="M3.5 1.2v4.6M1.2 3.5h4.6M10.5 8.2v4.6M8.2 10.5h4.6" /></pattern>`;

/** Where a crew may improvise, and signs beside what was found otherwise than drawn. */
export function freeLayer(frame: Frame, view: FaceView): TemplateResult<2> {
  return svg`
    <defs>${pattern}</defs>
    <g class="free-zone"><title>${view.freeSays}</title>
      ${view.free.map((box) => {
        const r = rectangle(frame, box);
        return svg`<rect fill="url(#free-zone)" x=${r.x} y=${r.y} width=${r.width} height=${r.height} />`;
      })}
    </g>`;
}

/** Signs with the numbers of the lines under the drawing. */
export function foundLayer(frame: Frame, found: readonly FoundMark[]): TemplateResult<2> {
  return svg`<g class="as-built">
    ${found.map((mark, i) =>
      mark.at.map(([x, y]) => {
        const [left, top] = [round(frame.x(x)) + 3, round(frame.y(y)) + 3];
        return svg`<g data-found=${i + 1}><title>${mark.line}</title><rect x=${left} y=${top} width="25" height="16" rx="2" /><text x=${left + 12.5} y=${top + 12.2} text-anchor="middle">${`\u2260${i + 1}`}</text></g>`;
      }),
    )}
  </g>`;
}

/** What the signs mean, under the drawing. */
export function freeLegend(view: FaceView, found: readonly FoundMark[], heading: string): TemplateResult {
  return html`
    <p class="free-says">${view.free.length === 0 ? nothing : html`<svg width="34" height="18" aria-hidden="true"><rect class="sample" x="0.5" y="0.5" width="33" height="17" /><rect fill="url(#free-zone)" x="0.5" y="0.5" width="33" height="17" /></svg>`} ${view.freeSays}</p>
    ${found.length === 0 ? nothing : html`<div class="found"><h2>${heading}</h2><ol>${found.map((mark) => html`<li>${mark.line}</li>`)}</ol></div>`}
  `;
}
