import { html, nothing, type TemplateResult } from 'lit';
import { planKey } from '../drawing/plan';
import type { Nearness } from '../drawing/frame';
import { liftTable, poleWidth, storeyPole } from '../drawing/pole';
import '../drawing/strip';
import '../parts/margin-list';
import '../parts/opening-line';
import { footer, masthead } from '../parts/masthead';
import type { Act } from '../line';
import type { Face, HouseState } from '../scene';
import { say } from '../words';

export interface WallBench {
  readonly face: Face;
  readonly nearness: Nearness;
  readonly chosen: string | null;
  readonly pointed: string | null;
  readonly settled: boolean;
  readonly broken: boolean;
  readonly told: string;
  /** Room for the strip and its pole, px. */
  readonly room: number;
  turn(face: Face): void;
  step(nearness: Nearness): void;
  choose(opening: string): void;
  act(act: Act): void;
}

/** The wall, unrolled. */
export function wallPage(bench: WallBench, state: HouseState): TemplateResult {
  const { face } = bench;
  const { scene } = state;
  const card = scene.openings.find((opening) => opening.name === bench.chosen) ?? scene.openings[0];
  const besides = bench.room >= 900;
  return html`
    ${masthead(
      { page: 'wall', house: state.key },
      state.name,
      html`<p class="totals"><a href="#findings">${scene.totals.line}</a></p>`,
      acts(bench, state),
    )}
    <main class="bench">
      <section class="board" aria-label=${say('web.drawing.heading')}>
        <div class="board-line">
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
          <p id="moving" class="hint">${say('web.drawing.moving')}</p>
        </div>
        <div class="strip">
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
          ${besides ? html`<div class="pole-beside">${storeyPole(scene, scene.views[face], bench.room - poleWidth, bench.nearness)}</div>` : nothing}
        </div>
        ${card === undefined ? nothing : html`<opening-line .card=${card} .refusal=${state.refusal} .settled=${bench.settled}></opening-line>`}
      </section>
      <div class="below">
        <section class="key" aria-label=${say('web.drawing.plan')}>${planKey(scene.plan, 236, bench.chosen, bench.choose)}</section>
        <section class="amounts">
          <h2>${say('web.amounts.heading')}</h2>
          <dl>
            ${scene.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}
          </dl>
          <div class=${besides ? 'only-read-aloud' : ''}>${liftTable(scene)}</div>
        </section>
        <margin-list .scene=${scene} .pointed=${bench.pointed}></margin-list>
      </div>
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}

function acts(bench: WallBench, state: HouseState): TemplateResult {
  const trouble = bench.broken ? say('web.line.lost') : state.refusal?.field === null ? state.refusal.sentence : null;
  return html`
    <p class="saved ${state.saved ? '' : 'unsaved'} ${trouble === null ? '' : 'reason'}" role="status">${trouble ?? state.savedLine}</p>
    ${
      state.fileDiffers
        ? html`<button type="button" class="act" @click=${() => bench.act('Reload')}>${say('web.act.reload')}</button>`
        : nothing
    }
    <button type="button" class="act" ?disabled=${!state.canUndo} @click=${() => bench.act('Undo')}>${say('web.act.undo')}</button>
    <button type="button" class="act" ?disabled=${!state.canRedo} @click=${() => bench.act('Redo')}>${say('web.act.redo')}</button>
    <button type="button" class="act save" ?disabled=${state.saved} @click=${() => bench.act('Save')}>${say('web.act.save')}</button>
  `;
}
