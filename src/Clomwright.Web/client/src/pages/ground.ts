import { html, nothing, type TemplateResult } from 'lit';
import { groundCut } from '../drawing/ground-cut';
import '../drawing/ground-plan';
import type { GroundScene } from '../form-scene';
import { acts, type Bench } from '../parts/acts';
import '../parts/earth-blank';
import '../parts/house-form';
import { footer, masthead } from '../parts/masthead';
import type { HouseState } from '../scene';
import { say } from '../words';

export interface GroundBench extends Bench {
  readonly settled: boolean;
  readonly told: string;
  /** Room for the drawings, px. */
  readonly room: number;
}

/** The ground: what the house is called and where it stands, its plan, what lies under the wall, and the rules it answers to. */
export function groundPage(bench: GroundBench, state: HouseState, ground: GroundScene): TemplateResult {
  if (bench.room <= 0) return html`<main class="wait"></main>`;
  const wide = bench.room >= 1000;
  const form = (of: string) => html`<house-form .house=${state.key} .of=${of} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal}></house-form>`;
  const drawing = wide ? 380 : Math.min(bench.room, 400);
  return html`
    ${masthead({ page: 'ground', house: state.key }, state.name, html`<p class="totals">${ground.house}</p>`, acts(bench, state))}
    <main class="bench ground">
      ${ground.diagnostics.filter((said) => said.error).map((said) => html`<p class="reason"><b>${said.path}</b> ${said.sentence}</p>`)}
      <section class="ground-row" aria-labelledby="plan-head">
        <div class="ground-drawing">
          <h2 id="plan-head">${say('web.ground.plan')}</h2>
          <ground-plan .scene=${ground} .size=${drawing} .settled=${bench.settled}></ground-plan>
          <dl class="ground-figures">${ground.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl>
        </div>
        <div class="ground-says">${form('title plan plan.points')}</div>
      </section>
      <section class="ground-row" aria-labelledby="foot-head">
        <div class="ground-drawing">
          <h2 id="foot-head">${say('web.ground.foot')}</h2>
          ${groundCut(ground.section, drawing)}
        </div>
        <div class="ground-says">${form('stem trench floor')}</div>
      </section>
      <section class="ground-place" aria-labelledby="place-head">
        <h2 id="place-head">${say('web.ground.place')}</h2>
        <p class="hint-line">${say('web.ground.place-hint')}</p>
        ${form('site stove prices')}
      </section>
      ${rules(bench, state, ground)}
      <section class="ground-place" aria-labelledby="assumed-head">
        <h2 id="assumed-head">${say('web.ground.assumed')}</h2>
        ${form('assumed')}
      </section>
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}

function rules(bench: GroundBench, state: HouseState, ground: GroundScene): TemplateResult {
  const open = ground.questions.filter((line) => line.answer === null);
  const answered = ground.questions.filter((line) => line.answer !== null);
  return html`
    <section class="ground-rules" aria-labelledby="rules-head">
      <h2 id="rules-head">${say('web.ground.rules')}</h2>
      <p class="hint-line">${say('web.ground.rules-hint')}</p>
      ${ground.bodies.map((body) => html`<p class="form-line body-line">${body.name}: <earth-blank class="in-line" bare .card=${body.blank} .refusal=${state.refusal} .settled=${bench.settled}></earth-blank></p>`)}
      ${ground.limits.length === 0 ? nothing : html`<details ?open=${ground.limits.some((line) => line.entered !== null)}><summary><h3>${say('web.ground.limits', { n: ground.limits.filter((line) => line.entered === null).length })}</h3></summary>
        ${ground.limits.map((line) => row(bench, state, line.name, line.entered, line.blanks, 'rules.entered', { body: line.body, rule: line.rule }, say('web.ground.enter')))}
      </details>`}
      <h3>${say('web.ground.questions', { n: open.length })}</h3>
      ${open.map((line) => row(bench, state, line.ask, null, line.blanks, 'rules.answers', { question: line.question }, say('web.ground.answer')))}
      ${answered.length === 0 ? nothing : html`<details><summary><h3>${say('web.ground.answered', { n: answered.length })}</h3></summary>
        ${answered.map((line) => row(bench, state, line.ask, line.answer, line.blanks, 'rules.answers', {}, ''))}
      </details>`}
    </section>
  `;
}

/** One question or number: written anew with who and when, or standing and to be changed. */
function row(bench: GroundBench, state: HouseState, words: string, stands: string | null, blanks: GroundScene['limits'][number]['blanks'], list: string, fixed: Record<string, string>, act: string): TemplateResult {
  return html`<div class="rule-row" data-row=${Object.values(fixed).at(-1) ?? stands ?? ''}>
    <p>${words}</p>
    ${
      stands === null
        ? html`<add-part .adds=${[{ path: list, way: '', label: act, asks: blanks }]} .of=${words} .fixed=${fixed} .refusal=${state.refusal} .settled=${bench.settled}></add-part>`
        : html`<p class="form-line">
            ${blanks.map((blank) => html`<span class="label">${blank.label}</span> <earth-blank class="in-line" bare .of=${words} .card=${blank} .refusal=${state.refusal} .settled=${bench.settled}></earth-blank> `)}
            <button type="button" class="act" @click=${(event: Event) => event.target?.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `take-${stands}-${Date.now()}`, change: { kind: 'take-out', path: stands, blank: `part.${stands}` } }, bubbles: true }))}>${say('web.form.take-out')}</button>
          </p>`
    }
  </div>`;
}
