import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Scene } from '../scene';
import type { StressPicture, StressScene } from '../stress-scene';
import { areaPath } from './contour';
import { path, round, type Frame } from './frame';
import { rulers } from './layers';

/** The wall under its openings, hatched by what it carries: each further share lays another hatching over those before it. */
export function stressLayer(frame: Frame, scene: Scene, stress: StressScene, picture: StressPicture): TemplateResult<2> {
  const { view } = scene;
  const [left, right] = [frame.x(0), frame.x(view.length)];
  return svg`
    ${stressHatches}
    <clipPath id="cob-only"><path d=${path(frame, view.wall)} /></clipPath>
    <g class="wall">
      <path class="stem" d=${path(frame, view.stem)} /><path class="stem-stones" d=${path(frame, view.stem)} />
      <path class="laid" d=${path(frame, view.wall)} />
      <g clip-path="url(#cob-only)">
        ${stress.bands.map((band, i) => svg`<path class="band band-${i}" data-band=${i} fill="url(#stress-${i})" d=${areaPath(frame, picture, view.length, 'pressed', band.from)} />`)}
        <path class="band pulled" fill="url(#stress-pull)" d=${areaPath(frame, picture, view.length, 'pulled', stress.tension.from)} />
      </g>
      <path class="edge" d=${path(frame, view.wall)} />
      <path class="bond-beam" d=${path(frame, view.bondBeam)} />
      <path class="floor" d="M${left - 10} ${round(frame.y(0))}H${right}" />
    </g>
    ${rulers(frame, scene, view)}
  `;
}

/** At each pier how much of what is allowed its hardest edge uses, and a ring where that is. */
export function pierEdges(frame: Frame, scene: Scene, picture: StressPicture): TemplateResult<2> | typeof nothing {
  const right = frame.x(scene.view.length);
  return svg`<g class="pier-edges">
    ${picture.piers.map((pier) =>
      pier.at.map(([x, y]) => {
        const [cx, cy] = [round(frame.x(x)), round(frame.y(y))];
        const before = cx > right - 60;
        return svg`<g data-pier=${pier.pier}><title>${pier.pier}: ${pier.used}</title><circle class="edge-ring" cx=${cx} cy=${cy} r="4.5" />
          <text class="edge-used" x=${cx + (before ? -9 : 9)} y=${cy - 7} text-anchor=${before ? 'end' : 'start'}>${pier.used}</text></g>`;
      }),
    )}
  </g>`;
}

/** The hatchings themselves; once on a page. */
export const stressHatches = svg`
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
