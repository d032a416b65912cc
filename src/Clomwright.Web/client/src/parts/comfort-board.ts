import { LitElement, html } from 'lit';
import type { ComfortFixes, ComfortScene } from '../comfort-scene';
import { coldWall, sunPlan } from '../drawing/cold-wall';
import { say } from '../words';

/** Fixes that were tried, by house and revision: a page drawn anew need not ask again. */
const tried = new Map<string, ComfortFixes>();

/** The cold wall, the sun by season and hour, and the fixes once somebody asks for them. */
export class ComfortBoard extends LitElement {
  static override properties = { scene: { attribute: false }, house: {}, revision: { type: Number }, room: { type: Number }, wall: { state: true }, season: { state: true }, hour: { state: true }, asking: { state: true } };

  declare scene: ComfortScene;
  declare house: string;
  declare revision: number;
  declare room: number;
  declare wall: number;
  declare season: number;
  declare hour: number;
  declare asking: boolean;

  constructor() {
    super();
    this.wall = this.season = 0;
    this.hour = 99;
    this.asking = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private get key(): string {
    return `${this.house}/${this.revision}`;
  }

  protected override render() {
    const season = this.scene.seasons[this.season];
    const noon = season === undefined ? 0 : season.hours.findIndex((hour) => hour.name === season.hours[Math.floor(season.hours.length / 2)]?.name);
    const on = season === undefined ? 0 : this.hour >= season.hours.length ? noon : this.hour;
    const hour = season?.hours[on] ?? null;
    const wall = this.scene.walls[this.wall];
    const fixes = tried.get(this.key);
    return html`
      <section class="comfort-wall" aria-labelledby="cold">
        <h2 id="cold">${say('web.comfort.cold')}</h2>
        ${
          wall === undefined
            ? html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${this.scene.notChecked}</p>`
            : html`
                <div class="choices" role="group" aria-label=${say('web.comfort.which-wall')}>
                  ${this.scene.walls.map((each, i) => html`<button type="button" class="act" aria-pressed=${i === this.wall ? 'true' : 'false'} @click=${() => (this.wall = i)}>${each.name}</button>`)}
                </div>
                <p class="wall-says" role="status">${wall.says}</p>
                <div class="slide" tabindex="0" role="group" aria-label=${say('web.comfort.cold')}>${coldWall(this.scene, wall, hour, this.room, `${wall.name}. ${wall.says}`)}</div>
                <p class="damp-key"><span class="swatch one"></span>${say('web.comfort.key-mould')} <span class="swatch two"></span>${say('web.comfort.key-water')} <span class="swatch sun"></span>${say('web.comfort.key-sun')}</p>
                <details>
                  <summary>${say('web.comfort.as-table')}</summary>
                  <table class="lifts">
                    <thead><tr><th scope="col">${say('web.comfort.facing')}</th><th scope="col">${say('web.comfort.foot')}</th><th scope="col">${say('web.comfort.head')}</th></tr></thead>
                    <tbody>${wall.table.map(([wind, foot, head]) => html`<tr><th scope="row">${wind}</th><td>${foot}</td><td>${head}</td></tr>`)}</tbody>
                  </table>
                </details>
              `
        }
      </section>
      <section class="comfort-sun" aria-labelledby="sun">
        <h2 id="sun">${say('web.comfort.sun')}</h2>
        ${
          season === undefined || hour === null
            ? html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${this.scene.noSun}</p>`
            : html`
                <div class="choices" role="group" aria-label=${say('web.comfort.which-season')}>
                  ${this.scene.seasons.map((each, i) => html`<button type="button" class="act" aria-pressed=${i === this.season ? 'true' : 'false'} @click=${() => (this.season = i)}>${each.name}</button>`)}
                </div>
                <label class="hour">${say('web.comfort.at')} <b>${hour.name}</b>
                  <input type="range" min="0" max=${season.hours.length - 1} .value=${String(on)} aria-valuetext="${hour.name}. ${hour.says}" @input=${(event: Event) => (this.hour = Number((event.target as HTMLInputElement).value))} />
                </label>
                <p class="sun-says" role="status">${hour.says}</p>
                ${sunPlan(this.scene, hour, Math.min(this.room, 340), `${season.name}, ${hour.name}: ${hour.says}`)}
                <p class="hint-line">${say('web.comfort.sun-note')}</p>
              `
        }
      </section>
      <section class="comfort-fixes" aria-labelledby="fixes">
        <h2 id="fixes">${say('web.comfort.fixes')}</h2>
        ${fixes !== undefined ? this.table(fixes) : html`<button type="button" class="act" ?disabled=${this.asking} @click=${() => void this.ask()}>${say(this.asking ? 'web.comfort.trying' : 'web.comfort.try')}</button>`}
      </section>
    `;
  }

  private table(fixes: ComfortFixes) {
    if (fixes.notChecked !== null) return html`<p class="none-checked"><b>${say('web.not-checked')}</b> ${fixes.notChecked}</p>`;
    return html`
      <div class="slide" tabindex="0" role="group" aria-label=${say('web.comfort.fixes')}>
        <table class="lifts fixes">
          <thead>
            <tr>${['fix', 'loss', 'heat', 'wood', 'saved', 'mould'].map((key) => html`<th scope="col">${say(`web.comfort.head.${key}`)}</th>`)}</tr>
          </thead>
          <tbody>${fixes.lines.map(([fix, ...rest]) => html`<tr><th scope="row">${fix}</th>${rest.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
        </table>
      </div>
      <p class="hint-line">${say('web.comfort.fixes-note')}</p>
    `;
  }

  private async ask(): Promise<void> {
    this.asking = true;
    const of = this.key;
    try {
      const answer = await fetch(`/api/houses/${encodeURIComponent(this.house)}/fixes`);
      if (answer.ok) tried.set(of, (await answer.json()) as ComfortFixes);
    } finally {
      this.asking = false;
    }
  }
}

customElements.define('comfort-board', ComfortBoard);
