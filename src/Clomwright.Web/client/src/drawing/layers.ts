import { nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { FaceView, FindingLine, Scene, Tick } from '../scene';
import { say } from '../words';
import { margin, path, rectangle, round, type Frame } from './frame';
import { spread } from './spread';

type Drawn = TemplateResult<2> | typeof nothing;

const lineHeight = 13;
const labelWidth = 38;

/** The wall itself: stem, cob, lift lines, bond beam, floor and outside grade. */
export function wallLayer(frame: Frame, scene: Scene, view: FaceView): Drawn {
  return svg`${wallBody(frame, view)} ${rulers(frame, scene, view)}`;
}

/** The same without its rulers. */
export function wallBody(frame: Frame, view: FaceView): Drawn {
  const left = frame.x(0);
  const right = frame.x(view.length);
  return svg`
    <g class="wall">
      <path class="stem" d=${path(frame, view.stem)} />
      <path class="stem-stones" d=${path(frame, view.stem)} />
      <path class="cob" d=${path(frame, view.wall)} />
      <path class="cob-straw" d=${path(frame, view.wall)} />
      <path class="lift-lines" d=${path(frame, view.liftLines, false)} />
      <path class="bond-beam" d=${path(frame, view.bondBeam)} />
      <path class="bond-beam-grain" d=${path(frame, view.bondBeam)} />
      ${view.grade === null ? nothing : svg`<path class="grade" d="M${left} ${round(frame.y(view.grade))}H${right}" />`}
      <path class="floor" d="M${left - 10} ${round(frame.y(0))}H${right}" />
    </g>
  `;
}

export function rulers(frame: Frame, scene: Scene, view: FaceView): Drawn {
  const foot = frame.y(scene.bottom) + 8;
  return svg`
    <g class="rulers" aria-hidden="true">
      ${scene.heights.map((tick) => {
        const y = round(frame.y(tick.at));
        return svg`<path d="M${margin.left - (tick.major ? 12 : 6)} ${y}H${margin.left - 2}" />`;
      })}
      ${heightLabels(frame, scene, view).map(
        ({ at, label }) => svg`<text x=${margin.left - 15} y=${round(frame.y(at)) + 4} text-anchor="end">${label}</text>`,
      )}
      <path d="M${frame.x(0)} ${foot}H${frame.x(view.length)}" />
      ${view.ticks.map((tick) => svg`<path d="M${round(frame.x(tick.at))} ${foot}v${tick.major ? 9 : 5}" />`)}
      ${thinned(view.ticks, frame.k).map((tick) => svg`<text x=${round(frame.x(tick.at))} y=${foot + 21} text-anchor="middle">${tick.label}</text>`)}
      ${[0, view.length].map((end) => {
        const x = round(frame.x(end));
        return svg`<path class="zero" d="M${x} ${margin.top - 22}V${foot + 9}" />
          <path class="zero-flag" d="M${x} ${margin.top - 22}l${end === 0 ? 8 : -8} 5l${end === 0 ? -8 : 8} 5z" />`;
      })}
    </g>
  `;
}

/** The labelled marks, every one or every second, fifth or tenth, so that their labels do not touch. */
export function thinned(ticks: readonly Tick[], k: number): Tick[] {
  const labelled = ticks.filter((tick) => tick.label !== null);
  const [first, second] = labelled;
  const apart = first && second ? Math.abs(second.at - first.at) * k : labelWidth;
  const every = [1, 2, 5, 10].find((n) => n * apart >= labelWidth) ?? 20;
  return labelled.filter((_, i) => i % every === 0);
}

/** What stands beside the ruler of heights: the floor and the ground first, then what has room. */
function heightLabels(frame: Frame, scene: Scene, view: FaceView): { at: number; label: string }[] {
  const ground = view.grade === null ? [] : [{ at: view.grade, label: say('web.drawing.grade') }];
  const rest = scene.heights.flatMap(({ at, label }) => (label === null ? [] : [{ at, label }]));
  const floor = rest.filter(({ at }) => at === 0);
  const placed: { at: number; label: string }[] = [];
  for (const label of [...floor, ...ground, ...rest]) {
    if (placed.every((other) => Math.abs(other.at - label.at) * frame.k >= lineHeight)) placed.push(label);
  }
  return placed;
}

/** The tees under the bond beam. */
export function builtInLayer(frame: Frame, view: FaceView): Drawn {
  return svg`
    <g class="built-in">
      <path class="tee" d=${path(frame, view.tees, false)} />
    </g>
  `;
}

/** A niche, or every one of a row built in, with room for a finger. */
export function builtInShape(frame: Frame, view: FaceView, name: string): Drawn {
  return svg`
    ${view.niches.filter((niche) => niche.name === name).map((niche) => svg`<path class=${niche.near ? 'niche' : 'niche far'} d=${path(frame, niche.outlines)}><title>${niche.label}</title></path>`)}
    ${view.embeds.filter((embed) => embed.name === name).map((embed) => {
      const x = round(frame.x(embed.at[0]));
      const y = round(frame.y(embed.at[1]));
      return svg`<circle class="hit" cx=${x} cy=${y} r="10" /><path class=${embed.near ? 'embed' : 'embed far'} d=${embedSign(embed.kind, x, y)}><title>${embed.label}</title></path>`;
    })}
  `;
}

function embedSign(kind: string, x: number, y: number): string {
  switch (kind) {
    case 'bottle':
    case 'sleeve':
    case 'pipe':
      return `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`;
    case 'shelf':
    case 'nailer':
      return `M${x - 7} ${y}h14M${x - 5} ${y}v3M${x + 5} ${y}v3`;
    case 'box':
    case 'wire':
      return `M${x - 3.5} ${y - 3.5}h7v7h-7z`;
    default:
      return `M${x - 4} ${y - 4}l8 8M${x + 4} ${y - 4}l-8 8`;
  }
}

/** Where poles come down on the bond beam. */
export function landingLayer(frame: Frame, scene: Scene, view: FaceView): Drawn {
  const y = round(frame.y(scene.top)) - 2;
  return svg`
    <g class="landings">
      ${view.landings.map((landing) => {
        const x = round(frame.x(landing.x));
        const half = landing.secondary ? 3 : 5.5;
        return svg`<path class=${landing.secondary ? 'landing secondary' : 'landing'} d="M${x} ${y}l${half} ${-half * 1.7}h${-2 * half}z"><title>${landing.name}</title></path>`;
      })}
    </g>
  `;
}

/** Numbers of findings at the places they speak of, and the place pointed at from the list. */
export function markLayer(frame: Frame, view: FaceView, findings: readonly FindingLine[], pointed: string | null): Drawn {
  const places = new Map(view.marks.map((mark) => [mark.id, mark.boxes]));
  const numbered = findings.flatMap((finding) => {
    const box = places.get(finding.id)?.[0];
    if (finding.number === null || box === undefined) return [];
    const r = rectangle(frame, box);
    return [{ finding, x: r.x + r.width / 2, y: r.y + 13 }];
  });
  const shown = pointed === null ? [] : (places.get(pointed) ?? []);
  return svg`
    <g class="marks">
      ${shown.map((box) => {
        const r = rectangle(frame, box);
        return svg`<rect class="pointed" x=${r.x - 4} y=${r.y - 4} width=${r.width + 8} height=${r.height + 8} rx="3" />`;
      })}
      ${repeat(
        spread(numbered, 21),
        (mark) => mark.finding.id,
        ({ finding, x, y }) => svg`
          <g class="number ${finding.standing} ${finding.id === pointed ? 'on' : ''}" data-finding=${finding.id}
             transform="translate(${round(x)} ${round(y)})">
            <circle r="9.5" /><text y="4.2" text-anchor="middle">${finding.number}</text>
          </g>`,
      )}
    </g>
  `;
}
