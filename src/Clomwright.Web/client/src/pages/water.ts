import { html, nothing, type TemplateResult } from 'lit';
import { waterLegend, waterWall } from '../drawing/water';
import type { Nearness } from '../drawing/frame';
import '../parts/day-slider';
import type { Scene } from '../scene';
import { cellOn, type WaterAnswer, type WaterScene } from '../water-scene';
import { say } from '../words';

/** The sheet of the wall's water: the strip as it stands on a day, and what comes next. */
export function waterSheet(scene: Scene, answer: WaterAnswer | null, day: number, room: number, nearness: Nearness): TemplateResult {
  const water = answer?.scene ?? null;
  if (answer?.trouble) return html`<p class="reason" role="alert">${answer.trouble}</p>`;
  if (water === null) {
    const share = `${Math.round((answer?.share ?? 0) * 100)} %`;
    return html`<p class="working" role="status">${say('web.water.working', { share })} <progress max="1" .value=${answer?.share ?? 0} aria-label=${say('web.water.working', { share })}></progress></p>`;
  }
  if (water.notChecked !== null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${water.notChecked}</p>`;
  const on = Math.min(day, water.days.length - 1);
  return html`
    <day-slider .water=${water} .day=${on}></day-slider>
    <p class="day-says" data-day=${on} role="status"><b>${water.days[on]}</b> ${water.says[on]}</p>
    <div class="slide" tabindex="0" role="group" aria-label=${say('web.water.said', { day: water.days[on] ?? '' })}>${waterWall(scene, water, on, room, nearness)}</div>
    <div class="water-key"><p class="legend-head">${say('web.water.legend')}</p>${waterLegend(water)}<p>${say('web.water.words')}</p></div>
    <p class="forecast">${say('web.water.forecast')} <span class="hint-how">${say('web.water.how')}</span></p>
  `;
}

/** Below the strip: bands in words, lift by lift, and every stretch on this day as a table. */
export function waterBelow(water: WaterScene, day: number): TemplateResult {
  const on = Math.min(day, water.days.length - 1);
  return html`
    <section class="amounts">
      <dl>${water.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl>
      ${water.warnings.length === 0 ? nothing : html`<h2>${say('web.water.warnings')}</h2><ul class="warnings">${water.warnings.map((warning) => html`<li>${warning}</li>`)}</ul>`}
    </section>
    <section class="water-tables">
      <div class="slide" tabindex="0" role="group" aria-label=${say('web.water.lifts')}>
        <table class="lifts">
          <caption>${say('web.water.lifts')}</caption>
          <thead>
            <tr>
              <th scope="col">${say('web.lifts.lift')}</th>
              <th scope="col">${say('web.water.laid-head')}</th>
              <th scope="col">${say('web.water.next')}</th>
              <th scope="col">${say('web.water.keys')}</th>
              <th scope="col">${say('web.water.settles')}</th>
            </tr>
          </thead>
          <tbody>
            ${water.lifts.toReversed().map(
              (lift) => html`<tr><th scope="row">${lift.number}</th><td>${lift.laid}</td><td>${lift.next}</td><td>${lift.keys}</td><td>${lift.settles}</td></tr>`,
            )}
          </tbody>
        </table>
      </div>
      <div class="slide" tabindex="0" role="group" aria-label=${say('web.water.table')}>
        <table class="lifts stretches">
          <caption>${say('web.water.table')}: ${water.days[on]}</caption>
          <thead>
            <tr>
              <th scope="col">${say('web.lifts.lift')}</th>
              ${water.bays.map((bay) => html`<th scope="col">${bay.name}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${water.lifts.toReversed().map(
              (lift) => html`<tr>
                <th scope="row">${lift.number}</th>
                ${
                  lift.shown === null || on < lift.shown
                    ? html`<td class="to-come" colspan=${water.bays.length}>${say('web.water.not-laid')}</td>`
                    : water.bays.map((_, bay) => {
                        const cell = cellOn(water, lift, bay, on);
                        return cell === null
                          ? html`<td></td>`
                          : html`<td class=${cell.word}>${say('web.water.cell', { water: cell.text, word: say(`web.water.${cell.word}`) })}${cell.unkeyed ? html`<br /><b>${say('web.water.unkeyed')}</b>` : nothing}</td>`;
                      })
                }
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </section>
  `;
}
