import { html, nothing, svg, type TemplateResult } from 'lit';
import type { FaceView, Scene } from '../scene';
import { say } from '../words';
import { frameOf, margin, round, type Nearness } from './frame';
import { inLine } from './spread';

export const poleWidth = 250;

/** The storey pole beside the wall: each lift at its height, with its top, its batches and how much of the ring one batch raises. */
export function storeyPole(scene: Scene, view: FaceView, room: number, nearness: Nearness): TemplateResult {
  const frame = frameOf(scene, view, room, nearness);
  const middles = scene.lifts.map((lift) => frame.y((lift.bottom + lift.top) / 2)).reverse();
  const rows = inLine(middles, 14.5, margin.top - 4, frame.height - margin.bottom + 20).reverse();
  return html`
    <svg class="storey-pole" width=${poleWidth} height=${round(frame.height)} aria-hidden="true">
      <text class="heading" y=${margin.top - 24}><tspan x="34">${say('web.lifts.lift')}</tspan><tspan x="66">${say('web.lifts.top')}</tspan
        ><tspan x="124">${say('web.lifts.batches')}</tspan><tspan x="178">${say('web.pole.rise')}</tspan></text>
      <path class="pole-edge" d="M8 ${round(frame.y(scene.top))}h10V${round(frame.y(scene.bottom))}h-10z" />
      ${scene.lifts.map((lift, i) => {
        const top = round(frame.y(lift.top));
        const row = round(rows[i] ?? top);
        const middle = round(frame.y((lift.bottom + lift.top) / 2));
        return svg`
          <rect class=${i % 2 === 0 ? 'pole-dark' : 'pole-light'} x="8" y=${top} width="10" height=${round((lift.top - lift.bottom) * frame.k)} />
          <path class="leader" d="M20 ${middle}L30 ${row}" />
          <text x="34" y=${row + 4}><tspan class="lift-number">${lift.number}</tspan><tspan x="66">${lift.topText}</tspan
            >${lift.batches === null ? nothing : svg`<tspan x="124">${lift.batches}</tspan>`}${
              lift.rise === null ? nothing : svg`<tspan x="178">${lift.rise}</tspan>`
            }</text>`;
      })}
    </svg>
  `;
}

/** The same as a table, for a phone and for reading aloud. */
export function liftTable(scene: Scene): TemplateResult {
  return html`
    <table class="lifts">
      <caption>${say('web.lifts.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">${say('web.lifts.lift')}</th>
          <th scope="col">${say('web.lifts.top')}</th>
          <th scope="col">${say('web.lifts.batches')}</th>
          <th scope="col">${say('web.lifts.rise')}</th>
          <th scope="col">${say('web.lifts.volume')}</th>
        </tr>
      </thead>
      <tbody>
        ${scene.lifts.toReversed().map(
          (lift) => html`<tr>
            <th scope="row">${lift.number}</th>
            <td>${lift.topText}</td>
            <td>${lift.batches ?? say('web.not-checked')}</td>
            <td>${lift.rise ?? say('web.not-checked')}</td>
            <td>${lift.volume}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  `;
}
