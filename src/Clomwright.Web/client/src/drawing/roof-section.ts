import { html, nothing, svg, type TemplateResult } from 'lit';
import type { RoofSectionView } from '../roof-scene';
import type { Point } from '../scene';

const line = 16;
const side = 12;

/** One pole from the eave over the wall to the ring, with what lies on it. */
export function roofSection(view: RoofSectionView, width: number, mostHeight: number): TemplateResult {
  const [left, right, bottom, top] = view.extent;
  const names = view.layers.toReversed();
  const room = names.length * line + 10;
  const beside = 92;
  const k = Math.min((width - side - beside) / (right - left), (mostHeight - 46) / (top - bottom));
  // The names of the layers stand over the eave; the drawing goes down as far as they need.
  const highestPin = names[0]?.outline[2]?.[1] ?? top;
  const above = Math.max(14, room - (top - highestPin) * k + 16);
  const height = Math.ceil((top - bottom) * k + above + 34);
  const x = (metres: number): number => round((metres - left) * k + side);
  const y = (metres: number): number => round((top - metres) * k + above);
  const at = ([along, up]: Point): string => `${x(along)} ${y(up)}`;
  const closed = (points: readonly Point[]): string => `M${points.map(at).join('L')}Z`;
  const pin = names[0] === undefined ? 0 : x(names[0].pin[0]);
  const lowestPin = view.layers[0]?.pin;

  return html`
    <svg class="roof-from-side" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${view.label}>
      <path class="cob" d=${closed(view.wall)} /><path class="cob-straw" d=${closed(view.wall)} />
      ${view.bondBeam === null ? nothing : svg`<path class="bond-beam" d=${closed(view.bondBeam)} /><path class="bond-beam-grain" d=${closed(view.bondBeam)} />`}
      ${view.support.length < 2 ? nothing : svg`<path class="support" d="M${view.support.map(at).join('L')}" />`}
      <path class="pole-body" d=${closed(view.pole)} />
      ${view.crossings.map(([along, up, diameter]) => svg`<g class="cut-pole"><circle cx=${x(along)} cy=${y(up)} r=${round((diameter * k) / 2)} /><circle class="end-grain" cx=${x(along)} cy=${y(up)} r=${round((diameter * k) / 5)} /></g>`)}
      ${view.layers.map((layer) => svg`<path class="layer ${layer.kind}" d=${closed(layer.outline)} /><path class="layer-hatch ${layer.kind}" d=${closed(layer.outline)} />`)}
      ${view.edgeBoard === null ? nothing : svg`<path class="edge-board" d=${closed(view.edgeBoard)} />`}
      ${
        lowestPin === undefined
          ? nothing
          : svg`<path class="flag" d="M${pin} ${y(lowestPin[1])}V${line - 3}" />
            ${names.map((layer, i) => svg`<circle class="flag-dot" cx=${pin} cy=${y(layer.pin[1])} r="1.9" /><text x=${pin + 7} y=${(i + 1) * line - 2}>${layer.name}</text>`)}`
      }
      ${view.notes.map((note) => noteOf(note.kind, note.text, [x(note.from[0]), y(note.from[1])], [x(note.to[0]), y(note.to[1])], width, height))}
    </svg>
  `;
}

function noteOf(kind: string, text: string, from: [number, number], to: [number, number], width: number, height: number) {
  const [x1, y1] = from;
  const [x2, y2] = to;
  if (kind === 'pitch') {
    const turned = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
    const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
    return svg`<text class="note" transform="translate(${round(mx)} ${round(my + 40)}) rotate(${round(turned)})" text-anchor="middle">${text}</text>`;
  }
  const label = kind === 'drop' ? svg`<text class="note" x=${Math.max(4, x1 - 8)} y=${height - 8}>${text}</text>` : besides(text, x1 + 10, Math.max(y1, y2) + 26, width);
  const ends = `M${x1 - 4} ${y1}h8M${x2 - 4} ${y2}h8`;
  return svg`<path class="dimension" d="M${x1} ${y1}L${x2} ${y2}${ends}" />${label}`;
}

/** A note that would stick out at the right ends at the edge instead. */
function besides(text: string, x: number, y: number, width: number) {
  const sticksOut = x + text.length * 7.5 > width;
  return svg`<text class="note" x=${sticksOut ? width - 4 : x} y=${y} text-anchor=${sticksOut ? 'end' : 'start'}>${text}</text>`;
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}
