import { html, nothing, type TemplateResult } from 'lit';
import { roofPlan } from '../drawing/roof-plan';
import { roofSection } from '../drawing/roof-section';
import { acts, type Bench } from '../parts/acts';
import '../parts/house-form';
import '../parts/knob-board';
import '../parts/margin-list';
import { footer, masthead } from '../parts/masthead';
import { stageTable } from '../parts/stage-table';
import { tightest } from '../parts/tightest';
import type { RoofScene } from '../roof-scene';
import type { HouseState } from '../scene';
import { say } from '../words';

export interface RoofBench extends Bench {
  readonly pointed: string | null;
  readonly settled: boolean;
  readonly told: string;
  /** Room for the drawings, px. */
  readonly room: number;
}

const gap = 34;

/** The roof: what has least to spare, the plan, the section, the knobs, every state of load, and what the rules say. */
export function roofPage(bench: RoofBench, state: HouseState, roof: RoofScene): TemplateResult {
  if (bench.room <= 0) return html`<main class="wait"></main>`;
  const besides = bench.room >= 1000;
  const planWidth = besides ? Math.min(600, Math.round(bench.room * 0.42)) : Math.min(bench.room, 640);
  const sectionWidth = besides ? bench.room - planWidth - gap : Math.min(bench.room, 760);
  return html`
    ${masthead(
      { page: 'roof', house: state.key },
      state.name,
      html`<p class="totals"><a href="#findings">${roof.totals.line}</a></p>`,
      acts(bench, state),
    )}
    <main class="bench roof">
      ${roof.trouble === null ? tightest(roof, bench.pointed) : html`<p class="reason no-roof" role="alert">${roof.trouble}</p>`}
      <div class="roof-board">
        <section class="roof-plan" aria-label=${say('web.roof.plan')}>
          ${roofPlan(roof, planWidth, bench.pointed)}
          <p class="hint">${say('web.roof.legend')} ${roof.plan.poles.some((pole) => pole.tightest) ? say('web.roof.legend-tightest') : nothing}</p>
        </section>
        <div class="roof-side">
          ${
            roof.section === null
              ? nothing
              : html`<section class="roof-section" aria-label=${roof.section.label}>${roofSection(roof.section, sectionWidth, besides ? 286 : 340)}</section>`
          }
          <knob-board .knobs=${roof.knobs} .refusal=${state.refusal} .settled=${bench.settled}></knob-board>
        </div>
      </div>
      <details class="more" ?open=${roof.kind === 'none'}>
        <summary><h2>${say('web.roof.all')}</h2></summary>
        <house-form .house=${state.key} .of=${'roof bondBeam tees'} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal}></house-form>
      </details>
      <div class="roof-below">
        ${
          roof.figures.length === 0
            ? nothing
            : html`<section class="amounts">
                <h2>${say('web.roof.follows')}</h2>
                <dl>
                  ${roof.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}
                </dl>
              </section>`
        }
        ${stageTable(roof)}
        <margin-list .scene=${roof} .heading=${say('web.roof.findings')} .pointed=${bench.pointed}></margin-list>
        <p class="whole-house">${say('web.roof.whole-house', { line: roof.house })}</p>
      </div>
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}
