import { nothing, svg, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { FaceView, PierLine, PierShape, Point } from '../scene';
import { rectangle, round, type Frame, type Rectangle } from './frame';

const digitHeight = 14;
const digitWidth = 5.8;

/** Where a pier's width may be written, as shares of its height from the top. */
const places = [0.42, 0.3, 0.55, 0.2, 0.68, 0.1, 0.82] as const;

/** Piers with their widths; hatched where something falls short, dotted where it is not checked. */
export function pierLayer(frame: Frame, view: FaceView, piers: readonly PierLine[]): TemplateResult<2> {
  const lines = new Map(piers.map((pier) => [pier.address, pier]));
  const inTheWay = obstacles(frame, view);
  return svg`
    <g class="piers">
      ${repeat(
        view.piers,
        (shape) => shape.address,
        (shape) => {
          const pier = lines.get(shape.address);
          return pier === undefined ? nothing : pierShape(frame, shape, pier, inTheWay);
        },
      )}
    </g>
  `;
}

function pierShape(frame: Frame, shape: PierShape, pier: PierLine, inTheWay: readonly Rectangle[]): TemplateResult<2> {
  const boxes = shape.boxes.map((box) => rectangle(frame, box));
  const widest = boxes.reduce((a, b) => (b.width > a.width ? b : a), { x: 0, y: 0, width: 0, height: 0 });
  return svg`
    <g class="pier ${pier.standing}" data-pier=${pier.address}>
      ${boxes.map((r) => svg`<rect class="hatch" x=${r.x} y=${r.y} width=${r.width} height=${r.height} />`)}
      <title>${pier.label}</title>
      ${dimension(widest, pier.width, inTheWay)}
    </g>
  `;
}

function dimension(r: Rectangle, width: string, inTheWay: readonly Rectangle[]): TemplateResult<2> {
  const long = width.length * digitWidth + 8;
  const lies = long < r.width;
  const middle = round(r.x + r.width / 2);
  const written = (line: number): Rectangle =>
    lies
      ? { x: middle - long / 2, y: line - digitHeight - 4, width: long, height: digitHeight + 6 }
      : { x: middle - digitHeight / 2, y: line, width: digitHeight, height: long + 10 };
  const lines = places.map((share) => round(r.y + r.height * share));
  const line = lines.find((at) => !inTheWay.some((thing) => overlap(thing, written(at)))) ?? lines[0] ?? r.y;
  return svg`
    <path class="dimension" d="M${r.x} ${line - 5}v10M${round(r.x + r.width)} ${line - 5}v10M${r.x} ${line}h${r.width}" />
    ${
      lies
        ? svg`<text class="width" x=${middle} y=${line - 5} text-anchor="middle">${width}</text>`
        : svg`<text class="width" transform="translate(${middle} ${line + 9}) rotate(90)" dy="0.33em">${width}</text>`
    }
  `;
}

/** What a width is not written over: niches and what is built in. */
function obstacles(frame: Frame, view: FaceView): Rectangle[] {
  const round = view.embeds.map(({ at: [x, y] }) => ({ x: frame.x(x) - 7, y: frame.y(y) - 7, width: 14, height: 14 }));
  return [...view.niches.flatMap((niche) => niche.outlines.map((outline) => around(frame, outline))), ...round];
}

function around(frame: Frame, outline: readonly Point[]): Rectangle {
  const xs = outline.map(([x]) => frame.x(x));
  const ys = outline.map(([, y]) => frame.y(y));
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

function overlap(a: Rectangle, b: Rectangle): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
