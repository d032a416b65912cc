import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { BlankCard } from '../earth-scene';
import type { Change, Refusal } from '../scene';

/** One blank of the earth page, or words to choose from. What was written and not understood stays, with the reason below it. */
export class EarthBlank extends LitElement {
  static override properties = { card: { attribute: false }, refusal: { attribute: false }, settled: { type: Boolean }, of: {}, bare: { type: Boolean } };

  declare card: BlankCard;
  declare refusal: Refusal | null;
  declare settled: boolean;
  /** Which test it belongs to, for reading aloud; empty for none. */
  declare of: string;
  /** The label stands in the head of a table. */
  declare bare: boolean;

  private draft: { text: string; asked: boolean; reason: string | null } | null = null;
  private gestures = 0;
  private readonly started = Date.now();

  constructor() {
    super();
    this.of = '';
    this.bare = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.settled || !this.draft?.asked) return;
    this.draft = this.refusal?.blank === this.card.key ? { ...this.draft, asked: false, reason: this.refusal.sentence } : null;
  }

  protected override render() {
    const { card } = this;
    const reason = this.draft?.reason ?? null;
    const id = card.key.replaceAll('.', '-');
    return html`
      ${this.bare ? nothing : html`<span class="label">${card.label}</span>`} ${card.choices.length > 0 ? this.choice(id) : this.blank(id, reason !== null)}
      ${reason === null ? nothing : html`<p class="reason" id="reason-${id}" role="alert">${reason}</p>`}
    `;
  }

  private get spoken(): string {
    return this.of === '' ? this.card.label : `${this.of}, ${this.card.label}`;
  }

  private blank(id: string, refused: boolean): TemplateResult {
    const text = this.draft?.text ?? this.card.text;
    return html`<input
      class="blank"
      type="text"
      autocomplete="off"
      spellcheck="false"
      name=${this.card.key}
      aria-label=${this.spoken}
      aria-invalid=${refused}
      aria-describedby=${refused ? `reason-${id}` : nothing}
      .value=${live(text)}
      @input=${(event: Event) => (this.draft = { text: valueOf(event), asked: false, reason: this.draft?.reason ?? null })}
      @change=${(event: Event) => this.written(valueOf(event))}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key !== 'Escape') return;
        this.draft = null;
        this.requestUpdate();
      }}
    />`;
  }

  private choice(id: string): TemplateResult {
    const now = this.draft?.text ?? this.card.text;
    return html`<select class="blank" name=${this.card.key} id="choice-${id}" aria-label=${this.spoken} .value=${live(now)} @change=${(event: Event) => this.written(valueOf(event))}>
      ${this.card.choices.map((choice) => html`<option value=${choice.value} ?selected=${choice.value === now}>${choice.label}</option>`)}
    </select>`;
  }

  private written(text: string): void {
    const change: Change = { kind: 'enter', blank: this.card.key, text };
    this.draft = { text, asked: true, reason: null };
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `enter-${this.card.key}-${++this.gestures}-${this.started}`, change }, bubbles: true }));
  }
}

function valueOf(event: Event): string {
  return (event.target as HTMLInputElement | HTMLSelectElement).value;
}

customElements.define('earth-blank', EarthBlank);
