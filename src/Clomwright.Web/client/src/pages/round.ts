import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { planKey } from '../drawing/plan';
import { HouseLine } from '../line';
import { footer, masthead } from '../parts/masthead';
import { dayPart, skinPart, sunPart, type Moment } from '../parts/round-parts';
import { hrefOf, papersAddress } from '../places';
import type { RoundKind, RoundScene, RoundSun, Skin } from '../round-scene';
import { facing, gone, pulled, stands, wayOf, ways, type Way } from '../round/looking';
import { paletteOf, builtSkin, stressSkin, waterSkin, type Palette } from '../round/skins';
import { valueAt } from '../round/reading';
import type { Look, Stage } from '../round/stage';
import type { HouseState } from '../scene';
import type { StressAnswer } from '../stress-scene';
import type { WaterAnswer } from '../water-scene';
import { say } from '../words';

const winds = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const;

/** The house in the round. The bodies come from the server; here they are only drawn. */
export class RoundPage extends LitElement {
  static override properties = Object.fromEntries(
    [['house', {}], ...['scene', 'state', 'look', 'skin', 'day', 'byDay', 'water', 'stress', 'sun', 'sunOn', 'moment', 'touched', 'trouble', 'flat'].map((name) => [name, { state: true }])] as [string, object][],
  );

  declare house: string;
  declare scene: RoundScene | null;
  declare state: HouseState | null;
  declare look: Look;
  declare skin: Skin;
  declare day: number;
  /** Only what is laid by the day looked at. */
  declare byDay: boolean;
  declare water: WaterAnswer | null;
  declare stress: StressAnswer | null;
  declare sun: RoundSun | null;
  declare sunOn: boolean;
  declare moment: Moment;
  declare touched: string;
  declare trouble: string | null;
  /** The browser draws nothing in the round. */
  declare flat: boolean;

  private line: HouseLine | null = null;
  private stage: Stage | null = null;
  private palette: Palette | null = null;
  private dressed = '';
  private held: { pointer: number; x: number; y: number; moved: boolean } | null = null;
  private readonly watch = new ResizeObserver(([entry]) => entry && this.stage?.fit(entry.contentRect.width, entry.contentRect.height));

  constructor() {
    super();
    this.scene = this.state = this.water = this.stress = this.sun = this.trouble = null;
    this.skin = 'built';
    this.byDay = this.sunOn = this.flat = false;
    this.day = 0;
    this.touched = '';
    const now = new Date();
    this.moment = { day: `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`, hour: 12 };
    this.look = { stand: 'outside', ...stands.outside, cut: 'whole', at: 0.5, facing: 205, laid: null, hidden: new Set() };
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('go-to-day', (event) => (this.day = (event as CustomEvent<number>).detail));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.close();
    void this.line?.stop();
    this.line = null;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has('house') || this.line !== null) return;
    this.line = new HouseLine(this.house, 'inside', (answer) => (answer.state === null ? (this.trouble = answer.trouble) : this.heard(answer.state)), () => {});
    this.line.start().catch(() => (this.trouble = say('web.line.lost')));
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('look') || changed.has('byDay') || changed.has('day') || changed.has('water') || changed.has('scene')) this.stage?.see(this.seen);
    if (changed.has('sun') || changed.has('scene')) this.stage?.shine(this.sun);
    this.dress();
    this.dataset.bodies = String(this.stage?.count ?? 0);
  }

  protected override render() {
    if (this.trouble !== null) return html`<main class="wait told"><h1>${say('web.trouble')}</h1><p class="reason">${this.trouble}</p><p><a href="/">${say('web.nav.another')}</a></p></main>`;
    const { scene } = this;
    if (scene === null) return html`<main class="wait"><h1 class="only-read-aloud">${say('web.program')}</h1><p>${say('web.wait')}</p></main>`;
    return html`
      ${masthead({ page: 'round', house: this.house }, scene.name, html`<p><a href=${hrefOf({ page: 'wall', house: this.house })}>${say('web.round.to-wall')}</a></p>`, nothing)}
      <main class="round">
        <h2 class="only-read-aloud">${say('web.round.heading')}</h2>
        ${this.flat ? this.withoutRound(scene) : this.inTheRound(scene)}
      </main>
      ${footer()}
    `;
  }

  private inTheRound(scene: RoundScene): TemplateResult {
    const { look } = this;
    return html`
      <section class="round-view" aria-label=${say('web.round.heading')}>
        <div class="board-line">
          ${this.choices((one) => say(`web.round.stand.${one}`), ['outside', 'above', 'inside'], look.stand, (stand) => this.change({ stand, ...stands[stand] }))}
          ${this.choices((one) => say(`web.round.skin.${one}`), ['built', 'stress', 'water'], this.skin, (skin) => this.wear(skin))}
          ${this.choices((one) => say(`web.round.cut.${one}`), ['whole', 'upright', 'level'], look.cut, (cut) => this.change({ cut, at: cut === 'level' ? 0.42 : 0.5, facing: cut === 'upright' ? facing(look) : look.facing }))}
        </div>
        <div
          class="round-picture"
          tabindex="0"
          role="group"
          aria-label=${`${scene.says} ${this.seenFrom}`}
          aria-describedby="round-keys"
          @keydown=${(event: KeyboardEvent) => this.pressed(event)}
          @pointerdown=${(event: PointerEvent) => this.taken(event)}
          @pointermove=${(event: PointerEvent) => this.moved(event)}
          @pointerup=${(event: PointerEvent) => this.left(event)}
          @pointercancel=${() => (this.held = null)}
          @wheel=${(event: WheelEvent) => this.rolled(event)}
        >
          <canvas role="img" aria-label=${scene.says}></canvas>
        </div>
        <div class="round-turns" role="group" aria-label=${say('web.round.move')}>
          ${ways.map((way) => html`<button type="button" data-way=${way} @click=${() => this.go(way)}>${say(`web.round.go.${way}`)}</button>`)}
          ${look.cut === 'whole' ? nothing : this.cutBlank()}
        </div>
        <p id="round-keys" class="hint-line">${say('web.round.keys')}</p>
        <p class="round-seen" role="status">${this.touched || this.seenFrom}</p>
      </section>
      <section class="round-side" aria-label=${say('web.round.beside')}>${this.dayPart()} ${skinPart(this.skin, this.water, this.stress)} ${sunPart(scene, this.sunOn, this.moment, this.sun, { shine: (on) => this.shine(on), at: (moment) => this.at(moment) })} ${this.kindsPart(scene)}
        <p><button type="button" class="act save-picture" @click=${() => this.save()}>${say('web.round.picture')}</button></p>
      </section>
    `;
  }

  /** What there is instead where nothing can be drawn in the round. */
  private withoutRound(scene: RoundScene): TemplateResult {
    return html`
      <section class="round-flat">
        <p class="reason" role="status">${say('web.round.flat')}</p>
        <p>${scene.says}</p>
        ${this.state?.scene ? planKey(this.state.scene.plan, 420, null) : nothing}
        <p><img src=${papersAddress(this.house, 'papers/section.svg')} alt=${say('web.round.section')} /></p>
      </section>
    `;
  }

  private choices<T extends string>(words: (one: T | 'which') => string, all: readonly T[], on: T, choose: (one: T) => void): TemplateResult {
    return html`<div class="choices" role="group" aria-label=${words('which')}>
      ${all.map((one) => html`<button type="button" aria-pressed=${one === on} @click=${() => choose(one)}>${words(one)}</button>`)}
    </div>`;
  }

  private cutBlank(): TemplateResult {
    return html`
      <label class="round-cut">${say('web.round.cut-at')}
        <input type="range" name="cut" min="0" max="100" step="1" .value=${String(Math.round(this.look.at * 100))} @input=${(event: Event) => this.change({ at: Number(valueOf(event)) / 100 })} />
      </label>
      ${this.look.cut === 'upright' ? html`<button type="button" data-way="face" @click=${() => this.change({ facing: facing(this.look) })}>${say('web.round.face-me')}</button>` : nothing}
    `;
  }

  private dayPart(): TemplateResult {
    return html`<div class="round-part">
      <label class="task"><input type="checkbox" name="by-day" .checked=${this.byDay} @change=${(event: Event) => this.growing((event.target as HTMLInputElement).checked)} /> ${say('web.round.by-day')}</label>
      ${this.byDay || this.skin === 'water' ? dayPart(this.water, this.onDay) : nothing}
    </div>`;
  }

  private kindsPart(scene: RoundScene): TemplateResult {
    return html`<fieldset class="round-part round-kinds"><legend>${say('web.round.kinds')}</legend>
      ${scene.kinds.map(
        ({ key, name }) => html`<label class="task"><input type="checkbox" name=${key} .checked=${!this.look.hidden.has(key)} @change=${() => this.hide(key)} /> ${name}</label>`,
      )}
    </fieldset>`;
  }

  private heard(state: HouseState): void {
    this.state = state;
    document.title = say('web.title.round', { name: state.name });
    if (this.scene?.revision === state.revision) return;
    this.water = this.stress = null;
    void this.fetched();
    this.want();
  }

  private async fetched(): Promise<void> {
    const answer = await fetch(`/api/houses/${encodeURIComponent(this.house)}/round`);
    if (!answer.ok) {
      this.trouble = ((await answer.json()) as { trouble?: string }).trouble ?? say('web.line.lost');
      return;
    }
    this.scene = (await answer.json()) as RoundScene;
    await this.updateComplete;
    await this.open();
    if (this.sunOn) await this.light();
  }

  private async open(): Promise<void> {
    const [canvas, scene] = [this.querySelector('canvas'), this.scene];
    if (canvas === null || scene === null) return;
    this.close();
    this.palette = paletteOf(this);
    try {
      const { Stage } = await import('../round/stage');
      if (!this.isConnected) return;
      this.stage = new Stage(canvas, scene, this.palette, say('web.drawing.north'));
    } catch {
      this.flat = true;
      return;
    }
    canvas.addEventListener('webglcontextlost', () => (this.flat = true), { once: true });
    this.stage.see(this.seen);
    this.watch.observe(canvas.parentElement ?? canvas);
    this.requestUpdate();
  }

  private close(): void {
    this.watch.disconnect();
    this.stage?.close();
    this.stage = null;
    this.dressed = '';
  }

  /** The look with the height that is laid on the day. */
  private get seen(): Look {
    const lifts = this.water?.scene?.lifts;
    if (!this.byDay || lifts === undefined || this.scene === null) return { ...this.look, laid: null };
    const laid = lifts.filter((lift) => lift.shown !== null && lift.shown <= this.onDay).map((lift) => lift.top);
    const to = Math.max(this.scene.bottom, ...laid);
    // A wall that is all laid is not cut at its top.
    return { ...this.look, laid: to >= this.scene.top - 1e-3 ? this.scene.top + 0.01 : to };
  }

  private get onDay(): number {
    return Math.min(this.day, Math.max(0, (this.water?.scene?.days.length ?? 1) - 1));
  }

  private get seenFrom(): string {
    const { stand, bearing } = this.look;
    const wind = say(`web.water.wind.${winds[Math.round((((bearing % 360) + 360) % 360) / 45) % 8] ?? 'n'}`);
    const from = say(`web.round.seen.${stand}`, { wind });
    const of = this.byDay && this.water?.scene ? this.water.scene.days[this.onDay] : undefined;
    return of === undefined ? from : `${from} ${of}`;
  }

  private change(look: Partial<Look>): void {
    this.touched = '';
    this.look = { ...this.look, ...look };
  }

  private go(way: Way): void {
    this.change(gone(this.look, way));
  }

  private pressed(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target !== event.currentTarget) return;
    const way = wayOf(event);
    if (way !== undefined) this.go(way);
    else if (event.key === 'Enter') this.read(0, 0);
    else if ((event.key === 'PageUp' || event.key === 'PageDown') && this.look.cut !== 'whole') this.change({ at: Math.min(1, Math.max(0, this.look.at + (event.key === 'PageUp' ? 0.04 : -0.04))) });
    else return;
    event.preventDefault();
  }

  private taken(event: PointerEvent): void {
    if (event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.held = { pointer: event.pointerId, x: event.clientX, y: event.clientY, moved: false };
  }

  private moved(event: PointerEvent): void {
    const { held } = this;
    if (held?.pointer !== event.pointerId) return;
    const [dx, dy] = [event.clientX - held.x, event.clientY - held.y];
    if (!held.moved && Math.hypot(dx, dy) < 4) return;
    this.held = { ...held, x: event.clientX, y: event.clientY, moved: true };
    this.change(pulled(this.look, dx, dy));
  }

  private left(event: PointerEvent): void {
    const { held } = this;
    this.held = null;
    if (held === null || held.moved || held.pointer !== event.pointerId) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    this.read((2 * (event.clientX - box.left)) / box.width - 1, 1 - (2 * (event.clientY - box.top)) / box.height);
  }

  private rolled(event: WheelEvent): void {
    if (!event.ctrlKey && document.activeElement !== event.currentTarget) return;
    event.preventDefault();
    this.go(event.deltaY < 0 ? 'near' : 'far');
  }

  /** Says what lies there and, with stress or water on the wall, how much. */
  private read(x: number, y: number): void {
    const touched = this.stage?.touch(x, y) ?? null;
    this.touched = touched === null ? say('web.round.nothing') : [touched.label, valueAt(touched, this.scene, this.skin, this.water?.scene ?? null, this.onDay, this.stress?.scene ?? null)].filter(Boolean).join(': ');
  }

  private wear(skin: Skin): void {
    this.touched = '';
    this.skin = skin;
    this.want();
  }

  private growing(on: boolean): void {
    this.byDay = on;
    this.touched = '';
    this.want();
  }

  /** Asks the server for what is looked at and not here yet. */
  private want(): void {
    if (this.line === null) return;
    if (this.skin === 'stress' && this.stress === null) {
      this.stress = { scene: null, trouble: null };
      this.line.stress((answer) => {
        this.stress = answer;
        if (answer.scene !== null) this.want();
      });
    } else if ((this.byDay || this.skin === 'water') && this.water === null) {
      this.water = { share: 0, scene: null, trouble: null };
      this.line.water((answer) => {
        this.water = answer;
        if (answer.scene !== null) this.want();
      });
    }
  }

  /** Lays on the wall what is chosen, once. */
  private dress(): void {
    const { stage, scene, palette } = this;
    if (stage === null || scene === null || palette === null) return;
    const stress = this.skin === 'stress' ? (this.stress?.scene ?? null) : null;
    const water = this.skin === 'water' ? (this.water?.scene ?? null) : null;
    const key = stress?.picture ? `stress ${stress.revision}` : water !== null && water.notChecked === null ? `water ${this.onDay}` : 'built';
    if (key === this.dressed) return;
    this.dressed = key;
    stage.dress(stress?.picture ? stressSkin(palette, scene, stress, stress.picture) : water !== null && key !== 'built' ? waterSkin(palette, scene, water, this.onDay) : builtSkin(palette));
  }

  private hide(kind: RoundKind): void {
    const hidden = new Set(this.look.hidden);
    if (!hidden.delete(kind)) hidden.add(kind);
    this.change({ hidden });
  }

  private shine(on: boolean): void {
    this.sunOn = on;
    if (on) void this.light();
    else this.sun = null;
  }

  private at(moment: Moment): void {
    this.moment = moment;
    void this.light();
  }

  private async light(): Promise<void> {
    const asked = this.moment;
    if (asked.day === '') {
      this.sun = { says: say('web.round.no-moment'), toward: null, patches: '', edges: '' };
      return;
    }
    const answer = await fetch(`/api/houses/${encodeURIComponent(this.house)}/round/sun?${new URLSearchParams({ day: asked.day, hour: String(asked.hour) })}`);
    if (asked !== this.moment || !this.sunOn) return;
    const told = (await answer.json()) as RoundSun & { trouble?: string };
    this.sun = answer.ok ? told : { says: told.trouble ?? say('web.line.lost'), toward: null, patches: '', edges: '' };
  }

  /** The picture as it is, large enough for paper. */
  still(width = 2400): HTMLCanvasElement | null {
    return this.stage?.still(width) ?? null;
  }

  private save(): void {
    this.still()?.toBlob((picture) => {
      if (picture === null) return;
      const link = document.createElement('a');
      link.href = URL.createObjectURL(picture);
      link.download = `${this.house}-round.png`;
      link.click();
      URL.revokeObjectURL(link.href);
    }, 'image/png');
  }
}

function valueOf(event: Event): string {
  return (event.target as HTMLInputElement).value;
}

customElements.define('round-page', RoundPage);
