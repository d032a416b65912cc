import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../words';
import type { Day } from './day';
import type { Entry, TodayLift, TodayScene, Waiting } from './scene';

export type Look = 'auto' | 'sun' | 'dark';

/** The papers as the server lists them; `wait` while they are drawn. */
export type Papers = null | 'wait' | { sheets: { key: string; title: string; group: string }[] };

/** The whole page, for one finger: what is looked at most stands first. */
export function page(day: Day): TemplateResult {
  const { scene } = day;
  return html`
    <header>
      <p class="house">${day.given.name}</p>
      <h1>${scene?.date ?? ''}</h1>
      ${scene === null ? nothing : html`<p class="plan">${scene.plan}</p>`}
      <div role="status">${state(day)}</div>
    </header>
    <main>
      ${scene === null ? html`<p class="wait">${say('web.today.wait')}</p>` : [lift(day, scene), top(scene), cautions(scene), day.writes ? write(day, scene) : writtenLine(scene), crew(scene), weather(scene), calls(scene)]}
      ${waits(day)} ${scene === null ? nothing : [papers(day), ends(day)]}
    </main>
    ${scene === null ? nothing : html`<nav class="thumb" aria-label=${say('web.today.on-page')}>${day.writes ? html`<a href="#write">${say('web.today.write')}</a>` : nothing}<a href="#call">${say('web.today.call')}</a></nav>`}
  `;
}

function state(day: Day): TemplateResult {
  const { scene } = day;
  if (day.saved) return html`<p class="state">${say('web.today.saved', { made: scene!.made })}</p>`;
  if (day.shutOut) return html`<p class="state wrong">${say('web.today.shut-out')}</p>`;
  return html`${day.lost ? html`<p class="state wrong">${say('web.today.lost')}</p>` : nothing}${scene === null ? nothing : html`<p class="state">${scene.made}</p>`}`;
}

function lift(day: Day, scene: TodayScene): TemplateResult {
  const at = day.lift ?? scene.at;
  const shown = at === null ? undefined : scene.lifts[at];
  if (shown === undefined) return html`<section aria-labelledby="lift"><h2 id="lift">${say('web.today.no-cob')}</h2><p>${scene.standing}</p>${steps(day, scene, scene.lifts.length)}</section>`;
  const ticked = day.keeper.now.ticks[shown.name] ?? [];
  return html`<section class="hero" aria-labelledby="lift">
    <h2 id="lift"><span class="soft">${at === scene.at ? say('web.today.at-lift') : nothing}</span> ${shown.name}</h2>
    <p class="up"><span class="soft">${say('web.today.to')}</span> <b>${shown.to}</b> <span class="soft">${shown.toOther}</span></p>
    <p>${shown.from}</p>
    <p class="batches"><b>${shown.batches}</b>${shown.each === '' ? nothing : html`, ${shown.each}`}</p>
    <p>${shown.below}</p>
    ${at === scene.at ? html`<p>${scene.heightToday}</p>` : nothing}
    ${scene.standing === '' ? nothing : html`<p class="soft">${scene.standing}</p>`}
    ${setIn(day, shown, ticked)} ${steps(day, scene, at!)}
  </section>`;
}

function setIn(day: Day, shown: TodayLift, ticked: readonly string[]): TemplateResult {
  if (shown.setIn.length === 0) return html`<h3>${say('web.today.set-in')}</h3><p>${say('web.today.set-in-none')}</p>`;
  const done = shown.setIn.filter((item) => ticked.includes(item.key)).length;
  return html`<fieldset class="ticks">
    <legend>${say('web.today.set-in')} <span class="soft">${say('web.today.set-in-of', { done, all: shown.setIn.length })}</span></legend>
    ${shown.setIn.map(
      (item) => html`<label class=${ticked.includes(item.key) ? 'done' : ''}
        ><input type="checkbox" .checked=${ticked.includes(item.key)} @change=${(event: Event) => day.tick(shown.name, item.key, (event.target as HTMLInputElement).checked)} /><span
          ><b>${item.what}</b><br />${say('web.today.set-in-at', { height: item.height, station: item.station })}</span
        ></label
      >`,
    )}
  </fieldset>`;
}

/** The lifts below and above, and back. */
function steps(day: Day, scene: TodayScene, at: number): TemplateResult {
  return html`<p class="acts">
    <button type="button" ?disabled=${at <= 0} @click=${() => day.go(at - 1)}>${say('web.today.lift-past')}</button>
    <button type="button" ?disabled=${at >= scene.lifts.length - 1} @click=${() => day.go(at + 1)}>${say('web.today.lift-next')}</button>
    ${day.lift === null || day.lift === scene.at ? nothing : html`<button type="button" @click=${() => day.go(null)}>${say('web.today.lift-now')}</button>`}
  </p>`;
}

function top(scene: TodayScene): TemplateResult {
  return html`<section aria-labelledby="ready">
    ${scene.top.length === 0 ? nothing : html`<h2>${say('web.today.top')}</h2>${scene.top.map((line) => html`<p>${line}</p>`)}`}
    <h2 id="ready">${say('web.today.ready')}</h2>
    <ul>${scene.ready.map((line) => html`<li>${line}</li>`)}</ul>
  </section>`;
}

function writtenLine(scene: TodayScene): TemplateResult | typeof nothing {
  return scene.written === null ? nothing : html`<section id="write" aria-label=${say('web.today.write')}><p>${say('web.today.written', { line: scene.written.line })}</p></section>`;
}

function write(day: Day, scene: TodayScene): TemplateResult {
  const blanks = scene.written === null || day.correcting || day.draft.date !== scene.today;
  return html`<section id="write" aria-labelledby="write-head">
    <h2 id="write-head">${say('web.today.write')}</h2>
    ${scene.written === null ? nothing : html`<p>${say('web.today.written', { line: scene.written.line })}</p>`}
    ${blanks
      ? html`<form @submit=${day.write}>
          <div class="two">${blank(day, 'raised', say('web.today.raised'), 'decimal', say('web.today.raised-hint'))} ${blank(day, 'people', say('web.today.people'), 'numeric')}</div>
          <div class="two">${blank(day, 'batches', say('web.today.batches-written'), 'decimal')} ${blank(day, 'date', say('web.today.day'), null)}</div>
          <label>${say('web.today.notes')}<textarea name="notes" rows="2" maxlength="2000" .value=${day.draft.notes} @input=${(event: Event) => day.take('notes', (event.target as HTMLTextAreaElement).value)}></textarea></label>
          ${day.wrong === null ? nothing : html`<p class="wrong" id="wrong-day" role="alert">${day.wrong.sentence}</p>`}
          <button type="submit" class="strong">${say('web.today.send')}</button>
        </form>`
      : html`<p class="acts"><button type="button" @click=${() => day.correct()}>${say('web.today.correct')}</button></p>`}
    <p class="told" role="status">${day.told}</p>
  </section>`;
}

function blank(day: Day, name: keyof Entry, label: string, mode: 'decimal' | 'numeric' | null, hint = ''): TemplateResult {
  const refused = day.wrong?.blank === name;
  return html`<label
    >${label}<input
      type=${mode === null ? 'date' : 'text'}
      name=${name}
      inputmode=${mode ?? nothing}
      placeholder=${hint === '' ? nothing : hint}
      autocomplete="off"
      aria-invalid=${refused ? 'true' : nothing}
      aria-describedby=${refused ? 'wrong-day' : nothing}
      .value=${day.draft[name] ?? ''}
      @input=${(event: Event) => day.take(name, (event.target as HTMLInputElement).value)}
      @change=${() => name === 'date' && day.show()}
  /></label>`;
}

/** What is not sent: how many, what the machine did not take, and how to carry it elsewhere. */
function waits(day: Day): TemplateResult {
  const { waiting } = day.keeper.now;
  const refused = waiting.filter((one) => one.why !== undefined);
  return html`<section class="waits" aria-live="polite" ?hidden=${waiting.length === 0}>
    ${waiting.length === 0 ? nothing : html`<p><b>${say(waiting.length === 1 ? 'web.today.sending-one' : 'web.today.sending', { n: waiting.length })}</b></p>`}
    ${refused.map((one) => refusal(day, one))}
    ${waiting.length === 0
      ? nothing
      : html`<p class="acts"><button type="button" @click=${() => void day.copy()}>${say('web.today.copy')}</button></p>
          ${day.copied === null ? nothing : html`<label>${say('web.today.copy-here')}<textarea readonly rows="4" .value=${day.copied} @focus=${(event: Event) => (event.target as HTMLTextAreaElement).select()}></textarea></label>`}`}
  </section>`;
}

function refusal(day: Day, one: Waiting): TemplateResult {
  return html`<p class="wrong">${say('web.today.refused', { why: one.why! })}</p>
    <p class="acts">
      <button type="button" @click=${() => day.correct(one)}>${say('web.today.correct')}</button>
      <button type="button" @click=${() => day.forget(one)}>${say('web.today.forget')}</button>
    </p>`;
}

function crew(scene: TodayScene): TemplateResult | typeof nothing {
  if (scene.crew === null) return nothing;
  return html`<section aria-labelledby="crew">
    <h2 id="crew">${say('web.today.crew')}</h2>
    ${scene.crew.people.length === 0 ? nothing : html`<dl class="crew">${scene.crew.people.map((one) => html`<div><dt>${one.name}</dt><dd>${one.before === one.after ? one.before : html`${one.before}<br />${one.after}`}</dd></div>`)}</dl>`}
    ${scene.crew.posts.length === 0 ? nothing : html`<ul>${scene.crew.posts.map((post) => html`<li>${post}</li>`)}</ul>`}
    <p class="soft">${scene.crewNote}</p>
  </section>`;
}

function weather(scene: TodayScene): TemplateResult {
  return html`<section aria-labelledby="weather">
    <h2 id="weather">${say('web.today.weather-head')}</h2>
    <p>${scene.weather}</p>
    <ul>${scene.weatherDo.map((line) => html`<li>${line}</li>`)}</ul>
  </section>`;
}

function calls(scene: TodayScene): TemplateResult {
  return html`<section id="call" class="calls" aria-labelledby="call-head">
    <h2 id="call-head">${say('web.today.call')}</h2>
    ${scene.calls.map(
      (call) => html`<a class="call" href=${`tel:${call.dial}`}><b>${call.who}</b> <span>${call.number}</span>${call.for === '' ? nothing : html` <span class="soft">${call.for}</span>`}</a>`,
    )}
    ${scene.callNotes.map((line) => html`<p>${line}</p>`)}
  </section>`;
}

function cautions(scene: TodayScene): TemplateResult {
  return html`<section class="cautions" aria-labelledby="cautions">
    <h2 id="cautions">${say('web.today.cautions')}</h2>
    <ul>${scene.cautions.map((line) => html`<li>${line}</li>`)}</ul>
  </section>`;
}

function papers(day: Day): TemplateResult | typeof nothing {
  if (day.saved) return nothing;
  const { key } = day.given;
  const at = `/api/houses/${encodeURIComponent(key)}/papers`;
  const { papers } = day;
  return html`<section class="papers" aria-labelledby="papers">
    <h2 id="papers">${say('web.today.papers')}</h2>
    ${papers === null
      ? html`<p class="acts"><button type="button" @click=${() => void day.showPapers()}>${say('web.today.papers-ask')}</button></p>`
      : papers === 'wait'
        ? html`<p>${say('web.today.papers-wait')}</p>`
        : html`<p><a href=${`/api/houses/${encodeURIComponent(key)}/site.pdf`} target="_blank">${say('web.today.papers-all')}</a></p>
            <ul>${papers.sheets.map((sheet) => html`<li><a href=${`${at}/${encodeURIComponent(sheet.key)}.svg`} target="_blank">${sheet.title}</a></li>`)}</ul>`}
  </section>`;
}

function ends(day: Day): TemplateResult {
  const look = (look: Look): TemplateResult => html`<button type="button" aria-pressed=${day.look === look} @click=${() => day.wear(look)}>${say(`web.today.look.${look}`)}</button>`;
  return html`<section class="ends" aria-labelledby="plain">
    <p class="acts" role="group" aria-label=${say('web.today.look')}><span>${say('web.today.look')}</span> ${look('auto')} ${look('sun')} ${look('dark')}</p>
    <p class="acts">
      <button type="button" @click=${day.save}>${say('web.today.save')}</button>
      <button type="button" @click=${() => print()}>${say('web.today.paper')}</button>
      ${day.saved ? nothing : html`<button type="button" @click=${() => void day.again()}>${say('web.today.again')}</button>`}
      ${day.given.role === 'own' && !day.saved ? html`<a href=${`/record/${encodeURIComponent(day.given.key)}`}>${say('web.today.workbench')}</a>` : nothing}
    </p>
    <h2 id="plain">${say('web.today.plain')}</h2>
    <ul>
      ${day.given.role === 'own' || day.saved ? nothing : html`<li>${say('web.today.plain-http')}</li>`}
      ${day.saved ? nothing : html`<li>${say('web.today.plain-tab')}</li><li>${say('web.today.plain-kept')}</li>`}
      <li>${say('web.today.plain-saved')}</li>
    </ul>
    ${!day.writes || day.saved
      ? nothing
      : html`<details>
          <summary>${say('web.today.paste')}</summary>
          <form @submit=${day.paste}>
            <label>${say('web.today.paste-hint')}<textarea name="copied" rows="3"></textarea></label>
            ${day.pasteWrong ? html`<p class="wrong" role="alert">${say('web.today.paste-bad')}</p>` : nothing}
            <button type="submit" class="strong">${say('web.today.paste')}</button>
          </form>
        </details>`}
  </section>`;
}
