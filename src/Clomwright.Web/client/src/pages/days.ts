import { html, nothing, type TemplateResult } from 'lit';
import type { BandRow, ChoicesAnswer, DaysAnswer, DaysScene, ForecastScene } from '../days-scene';
import { risingWall } from '../drawing/rising';
import { acts, type Bench } from '../parts/acts';
import '../parts/day-slider';
import '../parts/earth-blank';
import '../parts/house-form';
import { footer, masthead } from '../parts/masthead';
import type { HouseState, Scene } from '../scene';
import { say } from '../words';

export interface DaysBench extends Bench {
  readonly settled: boolean;
  readonly told: string;
  /** Room for the drawing, px. */
  readonly room: number;
  readonly forecast: DaysAnswer | null;
  readonly choices: ChoicesAnswer | null;
  /** Other ways are being tried. */
  readonly trying: boolean;
  /** Days since the first of work. */
  readonly day: number;
  tryOthers(): void;
  stopTrying(): void;
}

/** The days of the job: the crew, the bands, the wall as it rises, what limits it, what would help, who does what. */
export function daysPage(bench: DaysBench, state: HouseState, scene: Scene, days: DaysScene): TemplateResult {
  return html`
    ${masthead({ page: 'days', house: state.key }, state.name, html`<p class="totals">${scene.totals.line}</p>`, acts(bench, state))}
    <main class="bench earth days">
      <section class="crew-part" aria-labelledby="crew">
        <h2 id="crew">${say('web.days.crew')}</h2>
        ${days.missing === null ? nothing : html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${days.missing}</p>`}
        <div class="blanks">${days.blanks.map((card) => html`<earth-blank .card=${card} .refusal=${state.refusal} .settled=${bench.settled}></earth-blank>`)}</div>
        <details class="more">
          <summary><h3>${say('web.days.all')}</h3></summary>
          <house-form .house=${state.key} .of=${'crew'} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal}></house-form>
        </details>
      </section>
      ${whenThere(bench, scene)}
    </main>
    <p class="only-read-aloud" role="status">${bench.told}</p>
    ${footer()}
  `;
}

function whenThere(bench: DaysBench, scene: Scene): TemplateResult | typeof nothing {
  const answer = bench.forecast;
  if (answer?.trouble) return html`<p class="reason" role="alert">${answer.trouble}</p>`;
  if (answer?.scene == null) return working('web.days.working', answer?.share ?? 0);
  const forecast = answer.scene;
  if (forecast.notChecked !== null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${forecast.notChecked}</p>`;
  const on = Math.min(bench.day, forecast.days.length - 1);
  return html`
    <section class="amounts when-part" aria-labelledby="when">
      <h2 id="when">${say('web.days.when')}</h2>
      <dl>${forecast.figures.map((figure) => html`<div><dt>${figure.label}</dt><dd>${figure.value}</dd></div>`)}</dl>
      ${chart(forecast)}
      <p class="hint-line">${say('web.days.chart')}</p>
      ${forecast.notes.map((note) => html`<p class="note-line">${note}</p>`)}
    </section>
    <section class="rising-part" aria-labelledby="rising">
      <h2 id="rising">${say('web.days.rising')}</h2>
      <day-slider .water=${{ days: forecast.days, lifts: forecast.lifts }} .day=${on}></day-slider>
      <p class="day-says" data-day=${on} role="status"><b>${forecast.days[on]}</b> ${forecast.says[on]}</p>
      <div class="slide" tabindex="0" role="group" aria-label=${say('web.days.rising-said', { day: forecast.days[on] ?? '' })}>${bench.room > 0 ? risingWall(scene, forecast, on, bench.room) : nothing}</div>
    </section>
    <div class="days-below">
      ${ladder(forecast)}
      ${others(bench)}
    </div>
    ${week(forecast)}
  `;
}

function working(key: string, share: number): TemplateResult {
  const text = say(key, { share: `${Math.round(share * 100)} %` });
  return html`<p class="working" role="status">${text} <progress max="1" .value=${share} aria-label=${text}></progress></p>`;
}

/** Bands as rows of a table: the same days are written beside each. */
function chart(forecast: ForecastScene): TemplateResult {
  const share = (day: number) => `${Math.min(100, (day / forecast.last) * 100).toFixed(2)}%`;
  return html`
    <div class="bands" role="table" aria-label=${say('web.days.when')}>
      <div class="band-row band-head" role="row">
        <span role="columnheader">${say('web.days.what')}</span>
        <span role="columnheader" class="days-scale"><span class="only-read-aloud">${say('web.days.chart')}</span>${forecast.weeks.map((week) => html`<i aria-hidden="true" style="inset-inline-start:${share(week.day)}">${week.label}</i>`)}</span>
        <span role="columnheader">${say('web.days.early')}</span><span role="columnheader">${say('web.days.half')}</span><span role="columnheader">${say('web.days.late')}</span>
      </div>
      ${forecast.rows.map((row) => bandRow(row, forecast, share))}
    </div>
  `;
}

function bandRow(row: BandRow, forecast: ForecastScene, share: (day: number) => string): TemplateResult {
  const seen = row.early !== null && row.early <= forecast.last;
  const late = row.late ?? forecast.last;
  return html`<div class="band-row ${row.isLift ? 'of-lift' : ''}" role="row" data-mark=${row.key}>
    <span role="rowheader">${row.name}</span>
    <span role="cell" class="track">
      ${forecast.weeks.map((week) => html`<i class="week" aria-hidden="true" style="inset-inline-start:${share(week.day)}"></i>`)}
      ${
        seen && row.early !== null
          ? html`<i class="band ${row.late === null || row.late > forecast.last ? 'open' : ''}" aria-hidden="true" style="inset-inline-start:${share(row.early)};inset-inline-end:calc(100% - ${share(late + 1)})"></i>
              ${row.half !== null && row.half <= forecast.last ? html`<i class="half" aria-hidden="true" style="inset-inline-start:${share(row.half + 0.5)}"></i>` : nothing}`
          : html`<i class="beyond" aria-hidden="true">→</i>`
      }
    </span>
    <span role="cell">${row.earlyText}</span><span role="cell"><b>${row.halfText}</b></span><span role="cell">${row.lateText}</span>
  </div>`;
}

function ladder(forecast: ForecastScene): TemplateResult {
  return html`<section class="ladder" aria-labelledby="ladder">
    <h2 id="ladder">${say('web.days.ladder')}</h2>
    <div class="slide" tabindex="0" role="group" aria-label=${say('web.days.ladder')}>
      <table class="lifts">
        <thead><tr><th scope="col">${say('web.lifts.lift')}</th><th scope="col">${say('web.days.ladder-top')}</th><th scope="col">${say('web.days.ladder-limit')}</th><th scope="col">${say('web.days.ladder-waits')}</th><th scope="col">${say('web.days.ladder-band')}</th></tr></thead>
        <tbody>
          ${forecast.lifts.toReversed().map(
            (lift) => html`<tr data-limit=${lift.limit}><th scope="row">${lift.number}</th><td>${lift.topText}</td><td class="limit ${lift.limit}">${lift.limitText}</td><td class="waits"><i aria-hidden="true" style="inline-size:${Math.round(lift.byDrying * 56)}px"></i>${lift.waits}</td><td>${lift.band}</td></tr>`,
          )}
        </tbody>
      </table>
    </div>
  </section>`;
}

function others(bench: DaysBench): TemplateResult {
  const found = bench.choices?.scene ?? null;
  return html`<section class="others" aria-labelledby="others">
    <h2 id="others">${say('web.days.choices')}</h2>
    ${
      bench.trying && found === null
        ? html`${working('web.days.trying', bench.choices?.share ?? 0)}<p><button type="button" class="act" @click=${() => bench.stopTrying()}>${say('web.days.stop')}</button></p>`
        : found === null
          ? html`<p><button type="button" class="act" @click=${() => bench.tryOthers()}>${say('web.days.try')}</button></p>`
          : found.notChecked !== null
            ? html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${found.notChecked}</p>`
            : html`<div class="slide" tabindex="0" role="group" aria-label=${say('web.days.choices')}>
                  <table class="lifts ways">
                    <thead><tr><th scope="col">${say('web.days.way')}</th><th scope="col">${say('web.days.top')}, ${say('web.days.half')}</th><th scope="col">${say('web.days.poles')}, ${say('web.days.half')}</th><th scope="col">${say('web.days.poles')}, ${say('web.days.late')}</th></tr></thead>
                    <tbody>${found.ways.map(([what, ...cells]) => html`<tr><th scope="row">${what}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
                  </table>
                </div>
                ${found.weeks.map((line) => html`<p class="note-line">${line}</p>`)}
                <p class="hint-line">${found.note}</p>`
    }
    ${bench.choices?.trouble ? html`<p class="reason" role="alert">${bench.choices.trouble}</p>` : nothing}
  </section>`;
}

function week(forecast: ForecastScene): TemplateResult | typeof nothing {
  const { week } = forecast;
  if (week === null) return nothing;
  return html`<section class="week-part" aria-labelledby="week">
    <h2 id="week">${say('web.days.week')}</h2>
    <div class="slide" tabindex="0" role="group" aria-label=${say('web.days.week')}>
      <table class="lifts who">
        <thead><tr><th scope="col">${say('web.days.person')}</th>${week.days.map((day) => html`<th scope="col">${day}</th>`)}</tr></thead>
        <tbody>${week.rows.map((row) => html`<tr><th scope="row">${row.name}</th>${row.cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
      </table>
    </div>
    ${week.clashes.map((clash) => html`<p class="none-checked">${clash}</p>`)}
    <p class="hint-line">${week.note}</p>
  </section>`;
}
