import { html, svg, type TemplateResult } from 'lit';
import type { SectionView } from '../form-scene';
import type { Point } from '../scene';

/** The cut through the foot of the wall. */
export function groundCut(view: SectionView, width: number): TemplateResult {
  const [left, right, bottom, top] = view.extent;
  const edge = 12;
  const k = (width - 2 * edge) / (right - left);
  const height = (top - bottom) * k + 2 * edge;
  const at = ([x, y]: Point): string => `${((x - left) * k + edge).toFixed(1)} ${((top - y) * k + edge).toFixed(1)}`;
  const outline = (points: readonly Point[]): string => `M${points.map(at).join('L')}Z`;
  return html`
    <svg class="ground-cut" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${view.label}>
      <defs>
        <pattern id="rubble" width="22" height="18" patternUnits="userSpaceOnUse"><path class="stone" d="M2 5l5 -3l6 2l1 6l-6 3l-6 -3zM14 12l5 -2l3 4l-4 3z" /></pattern>
        <pattern id="cut-straw" width="14" height="12" patternUnits="userSpaceOnUse"><path class="straw" d="M1 9l5 -3M8 4l5 -2" /></pattern>
      </defs>
      ${view.parts.map((part) => svg`<path class="cut ${part.kind}" d=${outline(part.outline)} />${part.kind === 'trench' || part.kind === 'stem' ? svg`<path fill="url(#rubble)" d=${outline(part.outline)} />` : part.kind === 'cob' ? svg`<path fill="url(#cut-straw)" d=${outline(part.outline)} />` : ''}`)}
      ${view.lines.map((line) => {
        const [x, y] = at(line.kind === 'floor' ? line.from : line.to).split(' ').map(Number) as [number, number];
        return svg`<path class="level ${line.kind}" d="M${at(line.from)}L${at(line.to)}" />
          ${line.kind === 'damp' ? '' : svg`<text x=${x} y=${y - 5} text-anchor=${line.kind === 'floor' ? 'start' : 'end'}>${line.words}</text>`}`;
      })}
    </svg>
  `;
}
