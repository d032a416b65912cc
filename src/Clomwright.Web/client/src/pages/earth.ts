import { html, nothing, type TemplateResult } from 'lit';
import { jarPicture } from '../drawing/jar';
import { soilTriangle } from '../drawing/triangle';
import type { BlankCard, EarthScene } from '../earth-scene';
import { acts, type Bench } from '../parts/acts';
import '../parts/earth-blank';
import '../parts/house-form';
import '../parts/margin-list';
import { footer, masthead } from '../parts/masthead';
import { testList } from '../parts/test-list';
import { tightest } from '../parts/tightest';
import type { Change, Figure, HouseState } from '../scene';
import { say } from '../words';

export interface EarthBench extends Bench {
  readonly pointed: string | null;
  readonly settled: boolean;
  readonly told: string;
  /** Room for the drawings, px. */
  readonly room: number;
  ask(change: Change): void;
}

/** The earth: the jar, its triangle, the recipe, the next test, every test, and what the cob may carry. */
export function earthPage(bench: EarthBench, state: HouseState, earth: EarthScene): TemplateResult {
  if (bench.room <= 0) return html`<main class="wait"></main>`;
  const blanks = (cards: readonly BlankCard[]) =>
    html`<div class="blanks">${cards.map((card) => html`<earth-blank .card=${card} .refusal=${state.refusal} .settled=${bench.settled}></earth-blank>`)}</div>`;
  const wide = bench.room >= 1000;
  return html`
    ${masthead(
      { page: 'earth', house: state.key },
      state.name,
      html`<p class="totals"><a href="#findings">${earth.totals.line}</a></p>`,
      acts(bench, state),
    )}
    <main class="bench earth">
      ${tightest(earth, bench.pointed)}
      <section class="next" aria-labelledby="next" data-next=${earth.next.key}>
        <h2 id="next">${say('web.earth.next')}</h2>
        <div><p class="what">${earth.next.what}</p><p>${earth.next.because}</p></div>
      </section>
      <div class="earth-soil">
        <section class="jar-part" aria-labelledby="jar">
          <h2 id="jar">${say('web.earth.jar')}</h2>
          <div class="jar-beside">${earth.jar.layers.length === 0 ? nothing : jarPicture(earth.jar, 214, 190)} ${blanks(earth.jar.blanks)}</div>
          ${earth.jar.missing.map((missing) => html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${missing}</p>`)}
          ${
            earth.jar.times.length === 0
              ? nothing
              : html`<div class="amounts"><h3>${say('web.earth.times')}</h3>${figures(earth.jar.times)}<p class="hint-line">${earth.jar.temperature}</p></div>`
          }
        </section>
        <section class="triangle-part" aria-labelledby="triangle">
          <h2 id="triangle">${say('web.earth.triangle')}</h2>
          ${soilTriangle(earth.triangle, wide ? 470 : Math.min(bench.room, 480))}
          <p class="named ${earth.triangle.class === null ? 'unchecked' : ''}" data-class=${earth.triangle.class ?? 'none'}>${
            earth.triangle.class === null ? html`<b>${say('web.not-checked')}</b> ` : nothing
          }${earth.triangle.named}</p>
          <p class="hint-line">${earth.triangle.shares} ${say('web.earth.triangle-source', { source: earth.triangle.source })}</p>
        </section>
        <section class="amounts soil-part" aria-labelledby="plastic">
          <h2 id="plastic">${say('web.earth.plastic')}</h2>
          ${figures(earth.soil)}
          ${earth.handTests.length === 0 ? nothing : html`<h3>${say('web.earth.hands')}</h3>${earth.handTests.map((hand) => html`<p><b>${hand.label}</b> ${hand.value}</p>`)}`}
        </section>
      </div>
      <div class="earth-mix">
        <section class="recipe-part" aria-labelledby="recipe">
          <h2 id="recipe">${say('web.earth.bucketed')}</h2>
          ${blanks(earth.recipe)}
          <h3>${say('web.earth.carried')}</h3>
          ${blanks(earth.carried)}
          <div class="recipes">
            ${earth.recipes.map(
              (recipe) => html`<section class="amounts" data-recipe=${recipe.key}>
                <h3>${recipe.title}</h3>
                ${recipe.missing === null ? figures(recipe.lines) : html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${recipe.missing}</p>`}
              </section>`,
            )}
          </div>
        </section>
        <section class="strength-part amounts ${earth.strength.tag}" aria-labelledby="strength" data-strength=${earth.strength.tag}>
          <h2 id="strength">${say('web.earth.strength')} <span class="tag">${earth.strength.word}</span></h2>
          ${figures(earth.strength.lines)}
          <p>${earth.strength.why}</p>
          ${
            earth.strength.missing.length === 0
              ? nothing
              : html`<div class="missing"><h3>${say('web.earth.missing')}</h3><ul>${earth.strength.missing.map((line) => html`<li>${line}</li>`)}</ul></div>`
          }
          <h3>${say('web.earth.strength.by-rule')}</h3>
          ${figures(earth.strength.byRule)}
        </section>
      </div>
      <div class="earth-tests">
        <div>
          ${testList('bar', earth.bars, state.refusal, bench.settled, bench.ask)}
          <section class="amounts limits"><h3>${say('web.earth.limits')}</h3>${figures(earth.barLimits)}</section>
          ${testList('drop', earth.drops, state.refusal, bench.settled, bench.ask)}
          ${testList('block', earth.blocks, state.refusal, bench.settled, bench.ask)}
        </div>
        <div>
          ${testList('prism', earth.prisms, state.refusal, bench.settled, bench.ask)}
          ${testList('brick', earth.bricks, state.refusal, bench.settled, bench.ask)}
        </div>
      </div>
      <details class="more">
        <summary><h2>${say('web.earth.all')}</h2></summary>
        <house-form .house=${state.key} .of=${'mix'} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal}></house-form>
      </details>
      <margin-list .scene=${earth} .heading=${say('web.earth.findings')} .pointed=${bench.pointed}></margin-list>
      <p class="whole-house">${say('web.roof.whole-house', { line: earth.house })}</p>
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}

function figures(lines: readonly Figure[]): TemplateResult {
  return html`<dl>${lines.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl>`;
}
