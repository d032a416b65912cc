import { html, nothing, type TemplateResult } from 'lit';
import { stressHatches, stressLegend } from '../drawing/stress';
import { waterHatches, waterLegend } from '../drawing/water';
import type { RoundScene, RoundSun, Skin } from '../round-scene';
import type { StressAnswer } from '../stress-scene';
import type { WaterAnswer } from '../water-scene';
import { say } from '../words';
import './day-slider';

/** Room for hatchings that others are filled with. */
const unseen = (hatches: unknown) => html`<svg class="only-read-aloud" width="0" height="0" aria-hidden="true">${hatches}</svg>`;

/** The day looked at, or how far it is worked out. */
export function dayPart(answer: WaterAnswer | null, day: number): TemplateResult {
  if (answer?.trouble) return html`<p class="reason" role="alert">${answer.trouble}</p>`;
  const water = answer?.scene ?? null;
  if (water === null) {
    const share = `${Math.round((answer?.share ?? 0) * 100)} %`;
    return html`<p class="working" role="status">${say('web.water.working', { share })} <progress max="1" .value=${answer?.share ?? 0} aria-label=${say('web.water.working', { share })}></progress></p>`;
  }
  if (water.notChecked !== null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${water.notChecked}</p>`;
  return html`<day-slider .water=${water} .day=${day}></day-slider><p class="day-says" role="status"><b>${water.days[day]}</b> ${water.says[day]}</p>`;
}

/** What the hatchings on the wall mean. */
export function skinPart(skin: Skin, wet: WaterAnswer | null, solved: StressAnswer | null): TemplateResult | typeof nothing {
  if (skin === 'water') {
    const water = wet?.scene ?? null;
    return water === null || water.notChecked !== null ? nothing : html`<div class="round-part"><p class="legend-head">${say('web.water.legend')}</p>${unseen(waterHatches)}${waterLegend(water)}</div>`;
  }
  if (skin !== 'stress') return nothing;
  if (solved?.trouble) return html`<p class="reason" role="alert">${solved.trouble}</p>`;
  const stress = solved?.scene ?? null;
  if (stress === null) return html`<p class="working" role="status">${say('web.stress.working')}</p>`;
  return stress.notChecked !== null
    ? html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${stress.notChecked}</p>`
    : html`<div class="round-part"><p class="legend-head">${say('web.stress.legend')}</p>${unseen(stressHatches)}${stressLegend(stress)}<p class="hint-line">${say('web.stress.caution')}</p></div>`;
}

/** A day and an hour of the sun's own time. */
export interface Moment {
  day: string;
  hour: number;
}

/** Whether the sun shines in, on which day and at which hour. */
export function sunPart(scene: RoundScene, on: boolean, moment: Moment, sun: RoundSun | null, acts: { shine: (on: boolean) => void; at: (moment: Moment) => void }): TemplateResult {
  return html`<div class="round-part">
    <label class="task"><input type="checkbox" name="sun" .checked=${on} ?disabled=${scene.noSun !== null} @change=${(event: Event) => acts.shine((event.target as HTMLInputElement).checked)} /> ${say('web.round.sun')}</label>
    ${scene.noSun === null ? nothing : html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${scene.noSun}</p>`}
    ${
      on
        ? html`<div class="round-moment">
              <label>${say('web.round.day')} <input type="date" class="blank" name="sun-day" aria-invalid=${moment.day === ''} aria-describedby="sun-says" .value=${moment.day} @change=${(event: Event) => acts.at({ ...moment, day: (event.target as HTMLInputElement).value })} /></label>
              <label>${say('web.comfort.hour', { hour: moment.hour })}
                <input type="range" name="sun-hour" min="4" max="20" step="0.5" .value=${String(moment.hour)} @input=${(event: Event) => acts.at({ ...moment, hour: Number((event.target as HTMLInputElement).value) })} /></label>
            </div>
            <p class="sun-says ${moment.day === '' ? 'reason' : ''}" id="sun-says" role="status">${sun?.says ?? ''}</p>`
        : nothing
    }
  </div>`;
}
