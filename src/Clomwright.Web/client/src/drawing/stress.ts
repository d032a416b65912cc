import { html, svg, type TemplateResult } from 'lit';
import type { Scene } from '../scene';
import type { StressScene } from '../stress-scene';
import { say } from '../words';
import { frameOf, path, round, type Nearness } from './frame';
import { hatches } from './hatches';
import { rulers } from './layers';

/** The unrolled wall hatched by what it carries: each further share lays another hatching over those before it. */
export function stressWall(scene: Scene, stress: StressScene, room: number, nearness: Nearness): TemplateResult {
  const { view } = scene;
  const frame = frameOf(scene, view, room, nearness);
  const [left, right] = [frame.x(0), frame.x(view.length)];
  return html`
    <svg class="unrolled stress" width=${round(frame.width)} height=${round(frame.height)} role="img" aria-label=${say('web.stress.said')}>
      ${hatches} ${stressHatches}
      <clipPath id="cob-only"><path d=${path(frame, view.wall)} /></clipPath>
      <g class="wall">
        <path class="stem" d=${path(frame, view.stem)} /><path class="stem-stones" d=${path(frame, view.stem)} />
        <path class="laid" d=${path(frame, view.wall)} />
        <g clip-path="url(#cob-only)">
          ${stress.bands.map((band, i) => svg`<path class="band band-${i}" data-band=${i} fill="url(#stress-${i})" d=${path(frame, band.pieces)} />`)}
          <path class="band pulled" fill="url(#stress-pull)" d=${path(frame, stress.tension.pieces)} />
        </g>
        <path class="edge" d=${path(frame, view.wall)} />
        <path class="bond-beam" d=${path(frame, view.bondBeam)} />
        <path class="floor" d="M${left - 10} ${round(frame.y(0))}H${right}" />
      </g>
      ${rulers(frame, scene, view)}
      <g class="openings">
        ${view.openings.map(
          (opening) => svg`<path class="hole" d=${path(frame, opening.header)} /><path class="header-fill" d=${path(frame, opening.header)} />
            <path class="hole" d=${path(frame, opening.outlines)} /><path class="leaf" d=${path(frame, opening.outlines)} />`,
        )}
      </g>
      <g class="pier-edges">
        ${stress.piers.map((pier) =>
          pier.at.map(([x, y]) => {
            const [cx, cy] = [round(frame.x(x)), round(frame.y(y))];
            const before = cx > right - 60;
            return svg`<g data-pier=${pier.pier}><title>${pier.pier}: ${pier.used}</title><circle class="edge-ring" cx=${cx} cy=${cy} r="4.5" />
              <text class="edge-used" x=${cx + (before ? -9 : 9)} y=${cy - 7} text-anchor=${before ? 'end' : 'start'}>${pier.used}</text></g>`;
          }),
        )}
      </g>
    </svg>
  `;
}

const stressHatches = svg`
  <defs>
    <pattern id="stress-0" width="10" height="10" patternUnits="userSpaceOnUse"><path class="stress-line" d="M-2 12L12 -2M-2 2L2 -2M8 12L12 8" /></pattern>
    <pattern id="stress-1" width="10" height="10" patternUnits="userSpaceOnUse"><path class="stress-line" d="M-2 -2L12 12M-2 8L2 12M8 -2L12 2" /></pattern>
    <pattern id="stress-2" width="8" height="8" patternUnits="userSpaceOnUse"><path class="stress-line" d="M0 4h8" /></pattern>
    <pattern id="stress-3" width="8" height="8" patternUnits="userSpaceOnUse"><path class="stress-line thick" d="M4 0v8" /></pattern>
    <pattern id="stress-4" width="4" height="4" patternUnits="userSpaceOnUse"><path class="stress-line full" d="M-1 5L5 -1M-1 1L1 -1M3 5L5 3" /></pattern>
    <pattern id="stress-pull" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="stress-dot" cx="2.2" cy="2.2" r="1.7" /><circle class="stress-dot" cx="6.7" cy="6.7" r="1.7" /></pattern>
  </defs>
`;

/** What each hatching means. */
export function stressLegend(stress: StressScene): TemplateResult {
  const box = (fills: string[]) => html`<svg width="34" height="18" aria-hidden="true"><rect class="sample" x="0.5" y="0.5" width="33" height="17" />${fills.map((fill) => svg`<rect fill="url(#${fill})" x="0.5" y="0.5" width="33" height="17" />`)}</svg>`;
  return html`
    <dl class="water-legend">
      ${stress.bands.map((band, i) => html`<div><dt>${box(Array.from({ length: i + 1 }, (_, n) => `stress-${n}`))}</dt><dd>${band.says}</dd></div>`)}
      <div><dt>${box(['stress-pull'])}</dt><dd>${stress.tension.says}</dd></div>
    </dl>
  `;
}
