import { html, type TemplateResult } from 'lit';
import type { ComfortScene } from '../comfort-scene';
import { acts, type Bench } from '../parts/acts';
import '../parts/comfort-board';
import '../parts/house-form';
import { footer, masthead } from '../parts/masthead';
import type { HouseState } from '../scene';
import { say } from '../words';

export interface ComfortBench extends Bench {
  readonly settled: boolean;
  readonly told: string;
  /** Room for the drawings, px. */
  readonly room: number;
}

/** Warmth: what the house loses and by which part, where its wall is cold and damp, sun by hour, and what fixes bring. */
export function comfortPage(bench: ComfortBench, state: HouseState, comfort: ComfortScene): TemplateResult {
  if (bench.room <= 0) return html`<main class="wait"></main>`;
  return html`
    ${masthead({ page: 'comfort', house: state.key }, state.name, html`<p class="totals">${comfort.figures[0]?.label} ${comfort.figures[0]?.value}</p>`, acts(bench, state))}
    <main class="bench comfort">
      <div class="comfort-top">
        <section class="amounts" aria-labelledby="numbers">
          <h2 id="numbers">${say('web.comfort.numbers')}</h2>
          ${comfort.notChecked === null ? '' : html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${comfort.notChecked}</p>`}
          <dl>${comfort.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl>
          <p class="hint-line">${say('web.comfort.model')}</p>
        </section>
        <section class="loss" aria-labelledby="loss">
          <h2 id="loss">${say('web.comfort.by-part')}</h2>
          <table class="bars">
            <tbody>
              ${comfort.bars.map(
                (bar) => html`<tr data-part=${bar.part}>
                  <th scope="row">${bar.name}</th>
                  <td class="bar-cell"><span class="loss-bar ${bar.share < 0 ? 'below' : ''}" style="width: ${(Math.abs(bar.share) * 100).toFixed(1)}%"></span></td>
                  <td>${bar.text}</td>
                </tr>`,
              )}
            </tbody>
          </table>
        </section>
      </div>
      <comfort-board .scene=${comfort} .house=${state.key} .revision=${state.revision} .room=${bench.room}></comfort-board>
      <section class="comfort-parts" aria-labelledby="parts">
        <h2 id="parts">${say('web.comfort.parts')}</h2>
        <div class="slide" tabindex="0" role="group" aria-label=${say('web.comfort.parts')}>
          <table class="lifts">
            <thead>
              <tr>${['part', 'resistance', 'u', 'lag', 'swing'].map((key) => html`<th scope="col">${say(`web.comfort.head.${key}`)}</th>`)}</tr>
            </thead>
            <tbody>${comfort.parts.map(([name, ...rest]) => html`<tr><th scope="row">${name}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
          </table>
        </div>
      </section>
      <details class="more">
        <summary><h2>${say('web.comfort.all')}</h2></summary>
        <house-form .house=${state.key} .of=${'comfort'} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal}></house-form>
      </details>
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}
