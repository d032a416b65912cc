import { html, nothing, svg, type TemplateResult } from 'lit';
import type { RoofScene } from '../roof-scene';
import type { FindingLine, Point } from '../scene';
import { say } from '../words';
import { hatches } from './hatches';
import { spread } from './spread';

const edge = 20;

/** The roof from above: wall and openings below, bond beam, poles as they cross, ring, eave, landings with their distance to the nearest opening. */
export function roofPlan({ plan, findings }: RoofScene, width: number, pointed: string | null): TemplateResult {
  const [west, east, south, north] = plan.extent;
  const k = (width - 2 * edge) / Math.max(east - west, north - south);
  const height = Math.ceil((north - south) * k + 2 * edge);
  const left = (width - (east - west) * k) / 2;
  const xy = ([x, y]: Point): { x: number; y: number } => ({ x: round((x - west) * k + left), y: round((north - y) * k + edge) });
  const at = (point: Point): string => {
    const { x, y } = xy(point);
    return `${x} ${y}`;
  };
  const closed = (points: readonly Point[]): string => `M${points.map(at).join('L')}Z`;
  const open = (points: readonly Point[]): string => `M${points.map(at).join('L')}`;
  const small = width < 480;

  return html`
    <svg class="roof-from-above" width=${width} height=${height} viewBox="0 0 ${width} ${height}" role="img" aria-label=${say('web.roof.plan-said')}>
      ${hatches}
      <path class="wall-top" fill-rule="evenodd" d="${closed(plan.outside)}${closed(plan.inside)}" />
      ${plan.bondBeam.length < 2 ? nothing : svg`<path class="beam" fill-rule="evenodd" d="${plan.bondBeam.map(closed).join('')}" />`}
      ${plan.openings.map((opening) => svg`<path class="below" d=${closed(opening.outline)}><title>${opening.name}</title></path>`)}
      ${plan.eave === null ? nothing : svg`<path class="eave" d=${closed(plan.eave)} />`}
      ${plan.poles.map(
        (pole) => svg`<g class="pole-shape ${pole.standing} ${pole.tightest ? 'tight' : ''}" data-pole=${pole.number}>
          <path class="body" d=${closed(pole.outline)} /><path class="over" d=${closed(pole.outline)} /><title>${pole.label}</title></g>`,
      )}
      ${plan.over.map((outline) => svg`<g class="pole-shape ${plan.poles[0]?.standing ?? ''} ${plan.poles[0]?.tightest ? 'tight' : ''}"><path class="body" d=${open(outline)} /><path class="over" d=${open(outline)} /></g>`)}
      ${plan.ring === null ? nothing : svg`<path class="ring-circle" d=${closed(plan.ring)} />`}
      ${plan.landings.map((landing) => {
        const { x, y } = xy(landing.at);
        const label = xy(landing.labelAt);
        return svg`<g class="seat ${landing.standing}"><circle cx=${x} cy=${y} r=${landing.secondary ? 2.4 : 3.4} />${
          landing.margin === null || small ? nothing : svg`<text x=${label.x} y=${label.y + 4} text-anchor="middle">${landing.margin}</text>`
        }</g>`;
      })}
      ${plan.poles.map((pole) => {
        const { x, y } = xy(pole.butt);
        return svg`<g class="pole-number ${pole.tightest ? 'tight' : ''}"><circle cx=${x} cy=${y} r="10.5" /><text x=${x} y=${y + 4.4} text-anchor="middle">${pole.number}</text></g>`;
      })}
      ${marks(plan.marks.map((mark) => ({ id: mark.id, ...xy(mark.at) })), findings, pointed)}
      <g class="north" transform="translate(${width - 16} 16)"><path d="M0 -12l5 12h-10z" /><text y="13" text-anchor="middle">${say('web.drawing.north')}</text></g>
    </svg>
  `;
}

function marks(at: { id: string; x: number; y: number }[], findings: readonly FindingLine[], pointed: string | null) {
  const byId = new Map(findings.map((finding) => [finding.id, finding]));
  return svg`<g class="marks">${spread(at, 21).map(({ id, x, y }) => {
    const finding = byId.get(id);
    if (finding === undefined || finding.number === null) return nothing;
    return svg`<g class="number ${finding.standing} ${id === pointed ? 'on pointed-at' : ''}" data-mark=${id}><circle cx=${x} cy=${y} r="10" /><text x=${x} y=${y + 4.2} text-anchor="middle">${finding.number}</text></g>`;
  })}</g>`;
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}
