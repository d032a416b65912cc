import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { ArrivedAnswer, ArrivedScene, WayCard } from '../arrived-scene';
import { hatches } from '../drawing/hatches';
import { wayPicture } from '../drawing/way';
import type { HouseLine } from '../line';
import { acts, type Bench } from '../parts/acts';
import '../parts/finding-line';
import '../parts/issue-part';
import { footer, masthead } from '../parts/masthead';
import { hrefOf } from '../places';
import { newId, sendEntry } from '../record-scene';
import type { Change, HouseState, OpeningCard, Scene } from '../scene';
import { say, sayWith } from '../words';

export interface ArrivedBench extends Bench {
  readonly line: HouseLine | null;
  readonly settled: boolean;
  readonly room: number;
  ask(change: Change): void;
}

/** What became of what was tried. */
type Outcome = { way: WayCard; of: string } | null;

/** A frame came in another size: what it is, what it breaks, the ways to go on, and the papers that change for the one that is taken. */
export class ArrivedPage extends LitElement {
  static override properties = {
    bench: { attribute: false },
    state: { attribute: false },
    of: {},
    // What the bench shows changes without becoming another.
    settled: { type: Boolean },
    room: { type: Number },
    broken: { type: Boolean },
    opening: { state: true },
    width: { state: true },
    height: { state: true },
    share: { state: true },
    found: { state: true },
    wrong: { state: true },
    outcome: { state: true },
    asked: { state: true },
    written: { state: true },
  };

  declare bench: ArrivedBench;
  declare state: HouseState & { scene: Scene };
  declare of: string | undefined;
  declare settled: boolean;
  declare room: number;
  declare broken: boolean;
  declare opening: string;
  declare width: string;
  declare height: string;
  /** How far the trying is; null where nothing is tried. */
  declare share: number | null;
  declare found: { scene: ArrivedScene; of: string } | null;
  declare wrong: { sentence: string; blank: string | null } | null;
  declare outcome: Outcome;
  /** The papers are asked for without anything tried. */
  declare asked: boolean;
  /** What the record answered to the delivery. */
  declare written: { said: string; wrong: boolean } | null;

  private taking: WayCard | null = null;
  private tries = 0;
  private delivery = newId();

  constructor() {
    super();
    this.opening = this.width = this.height = '';
    this.share = this.found = this.wrong = this.outcome = this.written = null;
    this.asked = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.bench.line?.stopArriving();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('of') && this.of !== undefined) this.opening = this.of;
    if (!this.cards.some((card) => card.name === this.opening)) this.opening = this.cards[0]?.name ?? '';
    if (this.taking !== null && this.settled) {
      if (this.found?.of !== this.print) this.outcome = { way: this.taking, of: this.print };
      this.taking = null;
    }
    if (this.outcome !== null && this.outcome.of !== this.print) this.outcome = null;
  }

  /** What tells one state of the house from another; saving is none. */
  private get print(): string {
    return JSON.stringify([this.cards.map((card) => [card.name, card.fields]), this.state.scene.totals.line]);
  }

  private get cards(): readonly OpeningCard[] {
    return this.state.scene.openings;
  }

  protected override render() {
    const { state } = this;
    return html`
      ${masthead({ page: 'arrived', house: state.key }, state.name, html`<p class="totals">${state.scene.totals.line}</p>`, acts(this.bench, state))}
      <main class="bench arrived">
        <section class="came" aria-labelledby="came">
          <h2 id="came">${say('web.arrived.heading')}</h2>
          <p class="hint-line">${say('web.arrived.what')}</p>
          ${this.cards.length === 0 ? html`<p class="none-checked">${say('web.arrived.no-openings')}</p>` : this.form()}
        </section>
        ${this.share === null ? nothing : this.working(this.share)} ${this.found === null ? nothing : this.ways(this.found.scene, this.found.of)}
        ${
          this.outcome !== null || this.asked
            ? html`<section class="papers-change" aria-labelledby="papers-change">
                <h2 id="papers-change">${say('web.arrived.papers')}</h2>
                <issue-part .house=${state.key} .of=${this.print}></issue-part>
              </section>`
            : html`<p class="ask-papers"><button type="button" class="act" @click=${() => (this.asked = true)}>${say('web.arrived.ask-papers')}</button></p>`
        }
      </main>
      ${footer()}
    `;
  }

  private form(): TemplateResult {
    const card = this.cards.find((one) => one.name === this.opening);
    return html`
      <form
        @submit=${(event: Event) => {
          event.preventDefault();
          this.tryAll();
        }}
      >
        <p class="opening-sentence">
          ${sayWith('web.arrived.sentence', {
            opening: html`<select class="blank" name="opening" aria-label=${say('web.arrived.which')} @change=${(event: Event) => this.choose((event.target as HTMLSelectElement).value)}>
              ${this.cards.map((one) => html`<option value=${one.name} ?selected=${one.name === this.opening}>${one.name}</option>`)}
            </select>`,
            width: this.blank('width'),
            height: this.blank('height'),
          })}
          <button type="submit" class="write" ?disabled=${this.share !== null}>${say('web.arrived.try')}</button>
        </p>
        ${this.wrong === null ? nothing : html`<p class="reason" id="reason-arrived" role="alert">${this.wrong.sentence}</p>`}
        ${card === undefined ? nothing : html`<p class="hint-line">${say('web.arrived.drawn', { width: card.fields.width, height: card.fields.height, sill: card.fields.sill, station: card.fields.station })}</p>`}
      </form>
    `;
  }

  private blank(name: 'width' | 'height'): TemplateResult {
    const refused = this.wrong !== null && (this.wrong.blank === name || this.wrong.blank === null);
    return html`<input
      class="blank"
      type="text"
      name=${`came-${name}`}
      autocomplete="off"
      spellcheck="false"
      aria-label=${say(`web.arrived.${name}`)}
      aria-invalid=${refused}
      aria-describedby=${refused ? 'reason-arrived' : nothing}
      .value=${this[name]}
      @input=${(event: Event) => (this[name] = (event.target as HTMLInputElement).value)}
    />`;
  }

  private working(share: number): TemplateResult {
    const text = say('web.arrived.trying');
    return html`<p class="working" role="status">${text} <progress max="1" .value=${share} aria-label=${text}></progress> <button type="button" class="act" @click=${() => this.stop()}>${say('web.days.stop')}</button></p>`;
  }

  private ways(scene: ArrivedScene, of: string): TemplateResult {
    const { outcome } = this;
    const holds = of === this.print;
    return html`
      <section class="ways-on" aria-labelledby="ways-on" data-opening=${scene.opening}>
        <h2 id="ways-on">${say('web.arrived.ways')}</h2>
        <p class="ways-line"><b>${scene.line}</b> <span class="hint-line">${say('web.arrived.pictures')}</span></p>
        ${outcome === null ? nothing : this.taken(scene, outcome.way)}
        ${outcome !== null || holds ? nothing : html`<p class="reason" role="status">${say('web.arrived.tried-on-another')}</p>`}
        <svg width="0" height="0" aria-hidden="true">${hatches}</svg>
        ${outcome === null ? this.cardsOf(scene, holds) : html`<details class="tried-ways"><summary>${say('web.arrived.as-tried')}</summary>${this.cardsOf(scene, false)}</details>`}
        <p class="hint-line">${say('web.arrived.model')} <a href=${hrefOf({ page: 'wall', house: this.state.key })}>${say('web.nav.wall')}</a></p>
      </section>
    `;
  }

  private cardsOf(scene: ArrivedScene, open: boolean): TemplateResult {
    return html`<div class="way-cards">${scene.ways.map((way) => this.card(scene, way, open))}</div>`;
  }

  private card(scene: ArrivedScene, way: WayCard, open: boolean): TemplateResult {
    const wide = Math.min(this.room, this.room >= 1000 ? (this.room - 40) / 2 : this.room);
    const act = say(`web.arrived.take.${way.kind}`);
    return html`<article class="way-card ${way.good ? 'good' : 'bad'}" data-way=${way.kind}>
      <h3>${say(`web.arrived.way.${way.kind}`)}</h3>
      <p class="way-what">${way.what}</p>
      ${this.room > 0 ? html`<div class="way-drawing">${wayPicture(scene, way, Math.min(wide, 640))}</div>` : nothing}
      <p class="way-says ${way.good ? 'good' : 'bad'}">${way.says}</p>
      ${way.wrong === null ? nothing : html`<p class="reason">${way.wrong}</p>`}
      ${way.breaks.length === 0 ? nothing : html`<finding-lines class="breaks" .lines=${way.breaks}></finding-lines>`}
      ${way.changed.length === 0 ? nothing : html`<details class="changes"><summary>${say('web.arrived.changed', { count: way.changed.length })}</summary><finding-lines .lines=${way.changed}></finding-lines></details>`}
      ${
        way.wrong !== null
          ? html`<p class="hint-line">${say('web.arrived.cannot')}</p>`
          : html`<p class="act-line"><button type="button" class=${way.good ? 'write' : ''} aria-label=${`${act}: ${way.what}`} ?disabled=${!open} @click=${() => this.take(way)}>${act}</button></p>`
      }
    </article>`;
  }

  private taken(scene: ArrivedScene, way: WayCard): TemplateResult {
    return html`<div class="taken" role="status">
      <p><b>${say(way.kind === 'refuse' ? 'web.arrived.sent-back' : 'web.arrived.taken', { what: way.what })}</b></p>
      ${
        this.written === null
          ? html`<p><button type="button" class="act" @click=${() => void this.deliver(scene)}>${say('web.arrived.deliver')}</button></p>`
          : html`<p class=${this.written.wrong ? 'reason' : ''}>${this.written.said} <a href=${hrefOf({ page: 'record', house: this.state.key })}>${say('web.nav.record')}</a></p>`
      }
    </div>`;
  }

  private choose(opening: string): void {
    this.opening = opening;
    history.replaceState(null, '', hrefOf({ page: 'arrived', house: this.state.key, of: opening }));
  }

  private tryAll(): void {
    const { line } = this.bench;
    if (line === null) return;
    const [tried, of] = [++this.tries, this.print];
    this.found = this.wrong = this.outcome = this.written = null;
    this.delivery = newId();
    this.share = 0;
    line.arrived(
      this.opening,
      this.width,
      this.height,
      (answer) => this.answered(tried, of, answer),
      (lost) => {
        if (tried !== this.tries) return;
        this.share = null;
        if (lost) this.wrong = { sentence: say('web.line.lost'), blank: '' };
      },
    );
  }

  private answered(tried: number, of: string, { share, scene, trouble, blank }: ArrivedAnswer): void {
    if (tried !== this.tries) return;
    this.share = share;
    if (trouble !== null) this.wrong = { sentence: trouble, blank };
    if (scene !== null) this.found = { scene, of };
  }

  private stop(): void {
    this.tries++;
    this.share = null;
    this.bench.line?.stopArriving();
  }

  private take(way: WayCard): void {
    if (way.kind === 'refuse') {
      this.outcome = { way, of: this.print };
      return;
    }
    this.taking = way;
    this.bench.ask({ kind: 'take-way', opening: this.found?.scene.opening ?? '', way: way.kind });
  }

  /** What came stands in the record too, as something that was not as ordered. */
  private async deliver({ opening, came, today }: ArrivedScene): Promise<void> {
    try {
      const { wrong } = await sendEntry(this.state.key, { id: this.delivery, kind: 'delivery', date: today, what: say('web.arrived.frame-for', { name: opening }), of: '', found: came, measured: '', asOrdered: 'no' });
      this.written = wrong === null ? { said: say('web.arrived.delivered'), wrong: false } : { said: wrong.sentence ?? say('web.line.lost'), wrong: true };
    } catch {
      this.written = { said: say('web.line.lost'), wrong: true };
    }
  }
}

customElements.define('arrived-page', ArrivedPage);
