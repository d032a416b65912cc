import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { KnobCard } from '../roof-scene';
import type { Change, KnobName, Refusal } from '../scene';
import { say } from '../words';

/** What stands in a blank and is not in the house: being written, asked for, or refused with the reason. */
interface Draft {
  text: string;
  asked: boolean;
  reason: string | null;
}

/** Steps nearer together than this are taken back as one, ms. */
const sameTurn = 1500;

/** A button held down steps again after this long, and then this often, ms. */
const firstAgain = 420;
const again = 90;

/** The knobs of the roof. Each is a blank to write in, less and more, and a tape to pull; everything drawn follows while it is pulled. */
export class KnobBoard extends LitElement {
  static override properties = { knobs: { attribute: false }, refusal: { attribute: false }, settled: { type: Boolean } };

  declare knobs: readonly KnobCard[];
  declare refusal: Refusal | null;
  declare settled: boolean;

  private readonly drafts = new Map<KnobName, Draft>();
  private readonly refused = new Map<KnobName, string>();
  private pulled: { knob: KnobName; at: number } | null = null;
  private gestures = 0;
  private last = { knob: '', at: 0 };
  private holding = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.letGo();
  }

  protected override willUpdate(): void {
    if (!this.settled) return;
    const refusal = this.refusal;
    for (const [knob, draft] of this.drafts) {
      if (!draft.asked) continue;
      if (refusal?.knob === knob) this.drafts.set(knob, { ...draft, asked: false, reason: refusal.sentence });
      else this.drafts.delete(knob);
    }
    this.refused.clear();
    if (refusal !== null && refusal.knob !== null && !this.drafts.has(refusal.knob)) this.refused.set(refusal.knob, refusal.sentence);
  }

  protected override render() {
    if (this.knobs.length === 0) return nothing;
    return html`
      <h2>${say('web.knob.heading')}</h2>
      <div class="knobs">
        ${repeat(
          this.knobs,
          (knob) => knob.key,
          (knob) => this.knob(knob),
        )}
      </div>
      <p class="hint">${say('web.knob.how')}</p>
    `;
  }

  private knob(knob: KnobCard): TemplateResult {
    const reason = this.drafts.get(knob.key)?.reason ?? this.refused.get(knob.key) ?? null;
    return html`
      <div class="knob" data-knob=${knob.key} role="group" aria-label=${knob.label}>
        <span class="label" id="knob-${knob.key}">${knob.label}</span>
        ${knob.choices.length > 0 ? this.choices(knob) : this.tape(knob, reason !== null)}
        ${reason === null ? nothing : html`<p class="reason" id="reason-${knob.key}" role="alert">${reason}</p>`}
      </div>
    `;
  }

  private choices(knob: KnobCard): TemplateResult {
    return html`<span class="choices">
      ${knob.choices.map(
        ({ value, label }) =>
          html`<button type="button" aria-pressed=${value === knob.text} @click=${() => this.send(this.newGesture(knob), { kind: 'set', knob: knob.key, text: value })}>${label}</button>`,
      )}
    </span>`;
  }

  private tape(knob: KnobCard, isRefused: boolean): TemplateResult {
    const draft = this.drafts.get(knob.key);
    const text = draft?.text ?? knob.text;
    const at = this.pulled?.knob === knob.key ? this.pulled.at : knob.now;
    return html`
      ${this.stepper(knob, -1)}
      <input
        class="blank"
        type="text"
        autocomplete="off"
        spellcheck="false"
        name=${knob.key}
        aria-labelledby="knob-${knob.key}"
        aria-invalid=${draft?.reason != null}
        aria-describedby=${isRefused ? `reason-${knob.key}` : nothing}
        .value=${live(text)}
        @input=${(event: Event) => this.drafts.set(knob.key, { text: valueOf(event), asked: false, reason: draft?.reason ?? null })}
        @change=${(event: Event) => this.written(knob, valueOf(event))}
        @keydown=${(event: KeyboardEvent) => this.keyed(knob, event)}
      />
      ${this.stepper(knob, 1)}
      <input
        class="tape"
        type="range"
        min=${knob.least}
        max=${knob.most}
        step="1"
        aria-labelledby="knob-${knob.key}"
        aria-valuetext=${knob.text}
        .value=${live(String(Math.round(at)))}
        @pointerdown=${() => this.newGesture(knob)}
        @input=${(event: Event) => this.pulledTo(knob, Number(valueOf(event)))}
        @change=${() => this.settle()}
      />
    `;
  }

  private stepper(knob: KnobCard, way: -1 | 1): TemplateResult {
    return html`<button
      type="button"
      class="step"
      aria-label=${say(way < 0 ? 'web.knob.less' : 'web.knob.more', { knob: knob.label })}
      @pointerdown=${(event: PointerEvent) => this.held(knob, way, event)}
      @pointerup=${() => this.letGo()}
      @pointerleave=${() => this.letGo()}
      @pointercancel=${() => this.letGo()}
      @click=${(event: MouseEvent) => {
        // A press of the pointer has stepped already when it went down.
        if (event.detail === 0) this.step(knob, way);
      }}
    ><span aria-hidden="true">${way < 0 ? '\u2212' : '+'}</span></button>`;
  }

  private keyed(knob: KnobCard, event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape') {
      this.drafts.delete(knob.key);
      this.requestUpdate();
      return;
    }
    const way = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (way === undefined) return;
    event.preventDefault();
    this.step(knob, way * (event.shiftKey ? 5 : 1));
  }

  private held(knob: KnobCard, way: -1 | 1, event: PointerEvent): void {
    if (event.button !== 0) return;
    this.letGo();
    const gesture = this.newGesture(knob);
    const once = (): void => this.send(gesture, { kind: 'step', knob: knob.key, steps: way });
    const repeated = (): void => {
      once();
      this.holding = window.setTimeout(repeated, again);
    };
    once();
    this.holding = window.setTimeout(repeated, firstAgain);
  }

  private letGo(): void {
    clearTimeout(this.holding);
    this.holding = 0;
  }

  private step(knob: KnobCard, steps: number): void {
    this.drafts.delete(knob.key);
    this.send(this.sameGesture(knob), { kind: 'step', knob: knob.key, steps });
  }

  private pulledTo(knob: KnobCard, at: number): void {
    this.drafts.delete(knob.key);
    const gesture = this.sameGesture(knob);
    this.pulled = { knob: knob.key, at };
    this.send(gesture, { kind: 'turn', knob: knob.key, at });
  }

  private settle(): void {
    this.pulled = null;
  }

  private written(knob: KnobCard, text: string): void {
    this.drafts.set(knob.key, { text, asked: true, reason: null });
    this.send(this.newGesture(knob), { kind: 'set', knob: knob.key, text });
  }

  private newGesture(knob: KnobCard): string {
    this.gestures++;
    this.last = { knob: knob.key, at: Date.now() };
    return this.gesture(knob);
  }

  /** The gesture of a moment ago on the same knob, or a new one. */
  private sameGesture(knob: KnobCard): string {
    const fresh = this.last.knob !== knob.key || (Date.now() - this.last.at > sameTurn && this.pulled?.knob !== knob.key);
    if (fresh) return this.newGesture(knob);
    this.last.at = Date.now();
    return this.gesture(knob);
  }

  private gesture(knob: KnobCard): string {
    return `knob-${knob.key}-${this.gestures}-${this.started}`;
  }

  /** Another window's gestures are never taken for this one's. */
  private readonly started = Date.now();

  private send(gesture: string, change: Change): void {
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture, change }, bubbles: true }));
  }
}

function valueOf(event: Event): string {
  return (event.target as HTMLInputElement).value;
}

customElements.define('knob-board', KnobBoard);
