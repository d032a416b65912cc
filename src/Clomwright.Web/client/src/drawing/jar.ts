import { html, svg, type TemplateResult } from 'lit';
import type { JarView } from '../earth-scene';
import { round } from './frame';

const glass = { left: 12, width: 92, top: 16, bottom: 8 } as const;

/** The jar to its own scale: the layers as they settled, the water over them, each layer with its share. */
export function jarPicture(jar: JarView, width: number, height: number): TemplateResult {
  const tall = Math.max(jar.column ?? 0, ...jar.layers.map((layer) => layer.top)) || 1;
  const y = (metres: number): number => round(glass.top + (1 - metres / tall) * (height - glass.top - glass.bottom));
  const right = glass.left + glass.width;
  return html`
    <svg class="jar" width=${width} height=${height} role="img" aria-label=${jar.label}>
      ${earths}
      <rect class="jar-water" x=${glass.left} y=${y(jar.column ?? tall)} width=${glass.width} height=${round(y(0) - y(jar.column ?? tall))} />
      ${jar.layers.map((layer) => {
        const [top, bottom] = [y(layer.top), y(layer.bottom)];
        const box = { x: glass.left, y: top, width: glass.width, height: round(bottom - top) };
        return svg`
          <rect class="jar-layer ${layer.kind}" x=${box.x} y=${box.y} width=${box.width} height=${box.height} />
          <rect class="jar-hatch ${layer.kind}" x=${box.x} y=${box.y} width=${box.width} height=${box.height} />
          <path class="leader" d="M${right} ${round((top + bottom) / 2)}h12" />
          <text x=${right + 16} y=${round((top + bottom) / 2) + 4}>${layer.text}</text>`;
      })}
      <path class="glass" d="M${glass.left - 4} ${glass.top - 10}h3v${round(height - glass.top - glass.bottom + 10)}h${glass.width + 2}V${glass.top - 10}h3" />
    </svg>
  `;
}

/** Coarse grains, fine grains, flat plates: three earths that can be told apart without colour. */
const earths = svg`
  <defs>
    <pattern id="grains" width="11" height="11" patternUnits="userSpaceOnUse"><circle class="grain-dot" cx="3" cy="3" r="1.9" /><circle class="grain-dot" cx="8.5" cy="8" r="1.5" /></pattern>
    <pattern id="fine-grains" width="6" height="6" patternUnits="userSpaceOnUse"><circle class="grain-dot" cx="1.5" cy="1.5" r="0.8" /><circle class="grain-dot" cx="4.5" cy="4.5" r="0.8" /></pattern>
    <pattern id="plates" width="14" height="6" patternUnits="userSpaceOnUse"><path class="plate" d="M0 1.5h8M7 4.5h6" /></pattern>
  </defs>
`;
