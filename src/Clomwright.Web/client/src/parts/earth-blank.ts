import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Change, Refusal } from '../scene';

/** What a blank shows. */
export interface AnyBlank {
  key: string;
  label: string;
  text: string;
  choices: { value: string; label: string }[];
  /** What is known; something else may be written. */
  suggestions?: string[];
  /** What is wrong with what stands in it. */
  trouble?: string | null;
}

/** Longer words than this are written over several lines. */
const longest = 70;

/** One blank, or words to choose from. What was written and not understood stays, with the reason below it. */
export class EarthBlank extends LitElement {
  static override properties = { card: { attribute: false }, refusal: { attribute: false }, settled: { type: Boolean }, of: {}, bare: { type: Boolean } };

  declare card: AnyBlank;
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
    const reason = this.draft?.reason ?? (this.draft === null ? (card.trouble ?? null) : null);
    const id = card.key.replaceAll(/[^a-z0-9-]/gi, '-');
    // Without a space between them: the blank stands in a sentence.
    return html`${this.bare ? nothing : html`<span class="label">${card.label}</span>`}${card.choices.length > 0 ? this.choice(id) : card.text.length > longest && this.bare ? this.long(id, reason !== null) : this.blank(id, reason !== null)}${
      reason === null ? nothing : html`<p class="reason" id="reason-${id}" role="alert">${reason}</p>`
    }`;
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
      list=${this.suggested ? `known-${id}` : nothing}
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
    />${this.suggested ? html`<datalist id="known-${id}">${this.card.suggestions?.map((known) => html`<option value=${known}></option>`)}</datalist>` : nothing}`;
  }

  private get suggested(): boolean {
    return (this.card.suggestions?.length ?? 0) > 0;
  }

  /** Words that take more than a line; still one line of the house file, so that Enter writes it. */
  private long(id: string, refused: boolean): TemplateResult {
    return html`<textarea
      class="blank long"
      rows="2"
      spellcheck="false"
      name=${this.card.key}
      aria-label=${this.spoken}
      aria-invalid=${refused}
      aria-describedby=${refused ? `reason-${id}` : nothing}
      .value=${live(this.draft?.text ?? this.card.text)}
      @input=${(event: Event) => (this.draft = { text: valueOf(event), asked: false, reason: this.draft?.reason ?? null })}
      @change=${(event: Event) => this.written(valueOf(event))}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key !== 'Enter') return;
        event.preventDefault();
        (event.target as HTMLTextAreaElement).blur();
      }}
    ></textarea>`;
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
