import { html, nothing, type TemplateResult } from 'lit';
import { planKey } from '../drawing/plan';
import type { Nearness } from '../drawing/frame';
import { liftTable, poleWidth, storeyPole } from '../drawing/pole';
import '../drawing/strip';
import '../parts/free-legend';
import { stressBelow, stressSheet, withStress, type StressBench } from './stress';
import { waterBelow, waterSheet } from './water';
import '../parts/margin-list';
import '../parts/opening-line';
import { wallParts } from '../parts/wall-parts';
import { acts, type Bench } from '../parts/acts';
import { greeting } from '../parts/greeting';
import { footer, masthead } from '../parts/masthead';
import { hrefOf } from '../places';
import type { Face, HouseState, Scene } from '../scene';
import type { WaterAnswer } from '../water-scene';
import { say } from '../words';

/** What the strip shows: what is where, what it carries, or how wet it is. */
export type WallSheet = 'cutting' | 'stress' | 'water';

export interface WallBench extends Bench, StressBench {
  readonly pointed: string | null;
  readonly told: string;
  /** Room for the strip and its pole, px. */
  readonly room: number;
  readonly sheet: WallSheet;
  readonly water: WaterAnswer | null;
  /** Days since the first lift was laid. */
  readonly day: number;
  lay(sheet: WallSheet): void;
  turn(face: Face): void;
  step(nearness: Nearness): void;
  choose(opening: string): void;
}

/** The wall, unrolled. */
export function wallPage(bench: WallBench, state: HouseState, scene: Scene, greet = false): TemplateResult {
  const { face } = scene;
  const card = scene.openings.find((opening) => opening.name === bench.chosen) ?? (scene.parts.some((part) => part.name === bench.chosen) ? undefined : scene.openings[0]);
  const besides = bench.room >= 900;
  const cutting = bench.sheet === 'cutting';
  const told = bench.sheet === 'stress' ? withStress(bench, state, scene) : scene;
  const moves = bench.sheet !== 'water';
  return html`
    ${masthead(
      { page: 'wall', house: state.key },
      state.name,
      html`<p class="totals"><a href="#findings">${told.totals.line}</a></p>`,
      acts(bench, state),
    )}
    ${greet ? greeting(state.key, state.name) : nothing}
    <main class="bench">
      <section class="board" aria-label=${say('web.drawing.heading')}>
        <div class="board-line">
          <div class="choices sheets-of-wall" role="group" aria-label=${say('web.sheet.which')}>
            ${(['cutting', 'stress', 'water'] as const).map(
              (one) =>
                html`<button type="button" aria-pressed=${bench.sheet === one} @click=${() => bench.lay(one)}>${say(`web.sheet.${one}`)}</button>`,
            )}
          </div>
          <div class="choices" role="group" aria-label=${say('web.face.which')}>
            ${(['inside', 'outside'] as const).map(
              (one) =>
                html`<button type="button" aria-pressed=${face === one} @click=${() => bench.turn(one)}>${say(`web.face.${one}`)}</button>`,
            )}
          </div>
          <div class="choices" role="group" aria-label=${say('web.near.which')}>
            ${(['whole', 'near'] as const).map(
              (one) =>
                html`<button type="button" aria-pressed=${bench.nearness === one} @click=${() => bench.step(one)}>${say(`web.near.${one}`)}</button>`,
            )}
          </div>
          <p><a class="to-round" href=${hrefOf({ page: 'round', house: state.key })}>${say('web.round.link')}</a></p>
          ${moves ? html`<p id="moving" class="hint">${say(cutting ? 'web.drawing.moving' : 'web.stress.moving')}</p>` : nothing}
        </div>
        ${bench.sheet === 'water' ? waterSheet(scene, bench.water, bench.day, bench.room, bench.nearness) : nothing}
        ${bench.sheet === 'stress' ? stressSheet(bench, state, scene) : nothing}
        ${cutting ? html`<div class="strip">
          <div class="slide">
            <unrolled-wall
              .scene=${scene}
              .face=${face}
              .nearness=${bench.nearness}
              .chosen=${bench.chosen}
              .pointed=${bench.pointed}
              .settled=${bench.settled}
            ></unrolled-wall>
          </div>
          ${besides ? html`<div class="pole-beside">${storeyPole(scene, scene.view, bench.room - poleWidth, bench.nearness)}</div>` : nothing}
        </div>
        <free-legend .house=${state.key} .face=${face} .view=${scene.view}></free-legend>` : nothing}
        ${card === undefined || !moves ? nothing : html`<opening-line .house=${state.key} .card=${card} .refusal=${state.refusal} .settled=${bench.settled}></opening-line>`}
      </section>
      ${cutting ? wallParts(bench, state, scene) : nothing}
      ${cutting ? nothing : html`<div class="below water-below">${bench.sheet === 'water' && bench.water?.scene && bench.water.scene.notChecked === null ? waterBelow(bench.water.scene, bench.day) : nothing}
        ${bench.sheet === 'stress' && bench.stress?.scene && bench.stress.scene.notChecked === null ? stressBelow(bench, state, bench.stress.scene) : nothing}
        <margin-list .scene=${told} .heading=${say('web.findings.heading')} .pointed=${bench.pointed}></margin-list></div>`}
      ${cutting ? html`<div class="below">
        <section class="key" aria-label=${say('web.drawing.plan')}>${planKey(scene.plan, 236, bench.chosen, bench.choose)}</section>
        <section class="amounts">
          <h2>${say('web.amounts.heading')}</h2>
          <dl>
            ${scene.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}
          </dl>
          <div class=${besides ? 'only-read-aloud' : ''}>${liftTable(scene)}</div>
        </section>
        <margin-list .scene=${scene} .heading=${say('web.findings.heading')} .pointed=${bench.pointed}></margin-list>
      </div>` : nothing}
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}
