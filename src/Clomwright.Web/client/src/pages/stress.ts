import { html, nothing, type TemplateResult } from 'lit';
import type { Nearness } from '../drawing/frame';
import { stressLegend } from '../drawing/stress';
import '../drawing/strip';
import type { HouseState, Scene } from '../scene';
import type { FallAnswer, LiveAnswer, StressAnswer, StressPicture, StressScene } from '../stress-scene';
import { say } from '../words';

/** What the sheet of stress needs of the bench. */
export interface StressBench {
  readonly nearness: Nearness;
  readonly chosen: string | null;
  readonly settled: boolean;
  /** The wall as it was solved last; see <code>stale</code>. */
  readonly stress: StressAnswer | null;
  /** What it carries while an opening is in hand. */
  readonly live: LiveAnswer | null;
  /** The search for the push at which the house falls, and of which house it is. */
  readonly fall: FallAnswer | null;
  readonly fallOf: number;
  readonly falling: boolean;
  search(): void;
  giveUp(): void;
}

/** Whether the wall solved last is that of another house than the one looked at. */
export function stale(state: HouseState, stress: StressScene | null): boolean {
  return stress !== null && (stress.revision !== state.revision || stress.face !== state.scene?.face);
}

/** The sheet of what the wall carries: the strip with its openings to move, and what has least to spare with the case that governs it. */
export function stressSheet(bench: StressBench, state: HouseState, scene: Scene): TemplateResult {
  const answer = bench.stress;
  if (answer?.trouble) return html`<p class="reason" role="alert">${answer.trouble}</p>`;
  const stress = answer?.scene?.face === scene.face ? answer.scene : null;
  if (stress === null) return html`<p class="working" role="status">${say('web.stress.working')}</p>`;
  const { live } = bench;
  const picture = stress.notChecked === null ? (live?.picture ?? stress.picture) : null;
  // What cannot be solved is still there to be moved to where it can.
  if (picture === null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${stress.notChecked}</p>${strip(bench, scene, null, null)}`;
  const standing = live?.picture ? say('web.stress.on-the-way') : (live?.notFollowed ?? (stale(state, stress) ? say('web.stress.before') : ''));
  return html`
    <section class="tightest stress-tightest ${live?.picture ? 'on-the-way' : ''}" aria-labelledby="stress-tightest">
      <h2 id="stress-tightest">${say('web.stress.tightest')}</h2>
      <ol>
        ${picture.tightest.map(
          (line) => html`<li class="tight ${line.standing}">
            <span class="bar" aria-hidden="true"><span class="used" style="width:${(line.share * 100).toFixed(1)}%"></span></span>
            <b>${line.used}</b> <span class="what">${line.what}</span> <span class="case">${line.governs}</span>
          </li>`,
        )}
      </ol>
    </section>
    <p class="standing-of" role="status">${standing}</p>
    ${strip(bench, scene, stress, picture)}
    <div class="water-key"><p class="legend-head">${say('web.stress.legend')}</p>${stressLegend(stress)}<p>${say('web.stress.note')}</p></div>
    <p class="forecast"><b>${say('web.stress.caution')}</b></p>
  `;
}

function strip(bench: StressBench, scene: Scene, stress: StressScene | null, picture: StressPicture | null): TemplateResult {
  return html`<div class="slide">
    <unrolled-wall
      .scene=${scene}
      .face=${scene.face}
      .nearness=${bench.nearness}
      .chosen=${bench.chosen}
      .pointed=${null}
      .settled=${bench.settled}
      .stress=${stress}
      .picture=${picture}
    ></unrolled-wall>
  </div>`;
}

/** Below the strip: where the wall may crack first, how far to trust the model, and the search for the push at which the house falls. */
export function stressBelow(bench: StressBench, state: HouseState, stress: StressScene): TemplateResult {
  return html`
    <section class="amounts stress-words">
      <div><h2>${say('web.stress.zones')}</h2>
      ${stress.zones.length === 0 ? html`<p>${say('web.stress.no-zones')}</p>` : html`<ol class="warnings">${stress.zones.map((zone) => html`<li>${zone}</li>`)}</ol>`}</div>
      <div><h2>${say('web.stress.model')}</h2>
      ${stress.trust.map((line) => html`<p>${line}</p>`)}</div>
      ${fallPart(bench, state)}
    </section>
  `;
}

function fallPart(bench: StressBench, state: HouseState): TemplateResult {
  const { fall, falling } = bench;
  const found = fall?.scene ?? null;
  const old = bench.fallOf !== state.revision;
  const share = Math.floor(100 * (fall?.share ?? 0));
  return html`<div class="fall" aria-labelledby="fall">
    <h2 id="fall">${say('web.fall.heading')}</h2>
    ${found === null || old ? html`<p>${say('web.fall.what')}</p>` : nothing}
    ${falling ? html`<p class="fall-share"><progress max="100" value=${share} aria-labelledby="fall"></progress> <span>${say('web.fall.working', { share })}</span></p>` : nothing}
    ${found !== null && old && !falling ? html`<p>${say('web.fall.changed')}</p>` : nothing}
    ${fall?.trouble ? html`<p class="reason" role="alert">${fall.trouble}</p>` : nothing}
    ${found === null || old ? html`<p><button type="button" class="act" @click=${() => (falling ? bench.giveUp() : bench.search())}>${say(falling ? 'web.fall.stop' : 'web.fall.start')}</button></p>` : nothing}
    ${
      found === null || old
        ? nothing
        : found.notChecked !== null
          ? html`<p><b>${say('web.not-checked')}</b> ${found.notChecked}</p>`
          : html`<dl>${found.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl><p>${say('web.fall.paper')}</p>`
    }
  </div>`;
}

/** What the rules say with the wall solved, and the fall searched for: their findings in the place of those that were not asked for. What is of another house is left out. */
export function withStress(bench: StressBench, state: HouseState, scene: Scene): Scene {
  const stress = bench.stress?.scene ?? null;
  if (stress === null || stress.notChecked !== null || stale(state, stress)) return scene;
  const solved = { ...scene, findings: [...stress.findings, ...scene.findings.filter((finding) => !finding.id.startsWith('wall-model/'))], totals: stress.totals };
  const fall = bench.fall?.scene ?? null;
  if (fall === null || bench.fallOf !== state.revision) return solved;
  const told = new Set(fall.findings.map((finding) => finding.id));
  return { ...solved, findings: [...fall.findings, ...solved.findings.filter((finding) => !told.has(finding.id))], totals: fall.totals };
}
