import { html, type TemplateResult } from 'lit';
import type { Nearness } from '../drawing/frame';
import { stressLegend, stressWall } from '../drawing/stress';
import type { Scene } from '../scene';
import type { StressAnswer, StressScene } from '../stress-scene';
import { say } from '../words';

/** The sheet of what the wall carries: the strip, and what has least to spare with the case that governs it. */
export function stressSheet(scene: Scene, answer: StressAnswer | null, room: number, nearness: Nearness): TemplateResult {
  if (answer?.trouble) return html`<p class="reason" role="alert">${answer.trouble}</p>`;
  const stress = answer?.scene ?? null;
  if (stress === null) return html`<p class="working" role="status">${say('web.stress.working')}</p>`;
  if (stress.notChecked !== null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${stress.notChecked}</p>`;
  return html`
    <section class="tightest stress-tightest" aria-labelledby="stress-tightest">
      <h2 id="stress-tightest">${say('web.stress.tightest')}</h2>
      <ol>
        ${stress.tightest.map(
          (line) => html`<li class="tight ${line.standing}">
            <span class="bar" aria-hidden="true"><span class="used" style="width:${(line.share * 100).toFixed(1)}%"></span></span>
            <b>${line.used}</b> <span class="what">${line.what}</span> <span class="case">${line.governs}</span>
          </li>`,
        )}
      </ol>
    </section>
    <div class="slide" tabindex="0" role="group" aria-label=${say('web.stress.said')}>${stressWall(scene, stress, room, nearness)}</div>
    <div class="water-key"><p class="legend-head">${say('web.stress.legend')}</p>${stressLegend(stress)}<p>${say('web.stress.note')}</p></div>
    <p class="forecast"><b>${say('web.stress.caution')}</b></p>
  `;
}

/** Below the strip: where the wall may crack first, and how far to trust the model. */
export function stressBelow(stress: StressScene): TemplateResult {
  return html`
    <section class="amounts stress-words">
      <div><h2>${say('web.stress.zones')}</h2>
      ${stress.zones.length === 0 ? html`<p>${say('web.stress.no-zones')}</p>` : html`<ol class="warnings">${stress.zones.map((zone) => html`<li>${zone}</li>`)}</ol>`}</div>
      <div><h2>${say('web.stress.model')}</h2>
      ${stress.trust.map((line) => html`<p>${line}</p>`)}</div>
    </section>
  `;
}

/** What the rules say with the wall solved: its findings in the place of those that were not asked for. */
export function withStress(scene: Scene, stress: StressScene | null): Scene {
  if (stress === null || stress.notChecked !== null) return scene;
  return { ...scene, findings: [...stress.findings, ...scene.findings.filter((finding) => !finding.id.startsWith('wall-model/'))], totals: stress.totals };
}
