import { LitElement, html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import type { BlankCard, EarthTest } from '../earth-scene';
import type { Change, Refusal } from '../scene';
import { say } from '../words';

/** A row of blanks for a test that was just made; nothing is in the house until it is added. What was measured is never filled in. */
export class NewTest extends LitElement {
  static override properties = { test: {}, cards: { attribute: false }, refusal: { attribute: false }, settled: { type: Boolean }, revision: { type: Number } };

  declare test: EarthTest;
  declare cards: readonly BlankCard[];
  declare refusal: Refusal | null;
  declare settled: boolean;
  declare revision: number;

  private readonly written = new Map<string, string>();
  private asked = false;
  private reason: { sentence: string; within: string | null } | null = null;
  private gestures = 0;
  private readonly started = Date.now();

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.settled || !this.asked) return;
    this.asked = false;
    this.reason = this.refusal?.blank === `${this.test}.new` ? this.refusal : null;
    if (this.reason === null) this.written.clear();
  }

  protected override render() {
    return html`
      <form
        class="new-test"
        data-new=${this.test}
        aria-label=${say(`web.earth.${this.test}s-new`)}
        @submit=${(event: Event) => {
          event.preventDefault();
          this.add();
        }}
      >
        <h3>${say(`web.earth.${this.test}s-new`)}</h3>
        ${this.cards.map(
          (card) => html`<label
            ><span class="label">${card.label}</span>
            ${
              card.choices.length > 0
                ? html`<select class="blank" name=${card.key} aria-invalid=${this.refused(card)} aria-describedby=${this.refused(card) ? this.reasonId : nothing} .value=${live(this.textOf(card))} @change=${(event: Event) => this.wrote(card, event)}>
                    ${card.choices.map((choice) => html`<option value=${choice.value} ?selected=${choice.value === this.textOf(card)}>${choice.label}</option>`)}
                  </select>`
                : html`<input
                    class="blank"
                    type="text"
                    autocomplete="off"
                    spellcheck="false"
                    name=${card.key}
                    aria-invalid=${this.refused(card)}
                    aria-describedby=${this.refused(card) ? this.reasonId : nothing}
                    .value=${live(this.textOf(card))}
                    @input=${(event: Event) => this.wrote(card, event)}
                  />`
            }</label
          >`,
        )}
        <button type="submit" class="act">${say(`web.earth.add-${this.test}`)}</button>
        ${this.reason === null ? nothing : html`<p class="reason" id=${this.reasonId} role="alert">${this.reason.sentence}</p>`}
      </form>
    `;
  }

  private get reasonId(): string {
    return `reason-${this.test}-new`;
  }

  private refused(card: BlankCard): boolean {
    return this.reason !== null && (this.reason.within === null || this.reason.within === card.name);
  }

  private textOf(card: BlankCard): string {
    return this.written.get(card.name) ?? card.text;
  }

  private wrote(card: BlankCard, event: Event): void {
    this.written.set(card.name, (event.target as HTMLInputElement | HTMLSelectElement).value);
  }

  private add(): void {
    const texts = Object.fromEntries(this.cards.map((card) => [card.name, this.textOf(card)]));
    const change: Change = { kind: 'add-test', test: this.test, texts, blank: `${this.test}.new` };
    this.asked = true;
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `add-${this.test}-${++this.gestures}-${this.started}`, change }, bubbles: true }));
  }
}

customElements.define('new-test', NewTest);
