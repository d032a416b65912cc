import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Change, FieldName, OpeningCard, Refusal } from '../scene';
import { hrefOf } from '../places';
import { say, sayWith } from '../words';

/** What stands in a blank and is not in the house: being written, asked for, or refused with the reason. */
interface Draft {
  text: string;
  asked: boolean;
  reason: string | null;
}

const fields: readonly FieldName[] = ['station', 'sill', 'width', 'height'];

/** The chosen opening as one sentence with blanks to write in. What was written and not understood stays, with the reason beside it. */
export class OpeningLine extends LitElement {
  static override properties = { house: {}, card: { attribute: false }, refusal: { attribute: false }, settled: { type: Boolean } };

  declare house: string;
  declare card: OpeningCard;
  declare refusal: Refusal | null;
  declare settled: boolean;

  private readonly drafts = new Map<string, Draft>();

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.settled) return;
    for (const [key, draft] of this.drafts) {
      if (!draft.asked) continue;
      const refused = this.refusal !== null && key === `${this.refusal.opening}/${this.refusal.field}`;
      if (refused) this.drafts.set(key, { ...draft, asked: false, reason: this.refusal?.sentence ?? null });
      else this.drafts.delete(key);
    }
  }

  protected override render() {
    const blanks = Object.fromEntries(fields.map((field) => [field, this.blank(field)]));
    return html`
      <p class="opening-sentence">${sayWith('web.opening.sentence', { name: html`<b>${this.card.name}</b>`, ...blanks })} <a class="another-size" href=${hrefOf({ page: 'arrived', house: this.house, of: this.card.name })}>${say('web.arrived.link')}</a></p>
      ${fields.map((field) => {
        const reason = this.draft(field)?.reason ?? null;
        return reason === null ? nothing : html`<p class="reason" id="reason-${field}" role="alert">${reason}</p>`;
      })}
      ${this.card.trouble === null ? nothing : html`<p class="reason">${this.card.trouble}</p>`}
    `;
  }

  private key(field: FieldName): string {
    return `${this.card.name}/${field}`;
  }

  private draft(field: FieldName): Draft | undefined {
    return this.drafts.get(this.key(field));
  }

  private blank(field: FieldName): TemplateResult {
    const draft = this.draft(field);
    const text = draft?.text ?? this.card.fields[field];
    const refused = draft?.reason != null;
    return html`<input
      class="blank"
      type="text"
      autocomplete="off"
      spellcheck="false"
      size=${Math.max(4, text.length - 1)}
      name=${field}
      aria-label=${say(`web.field.${field}`, { name: this.card.name })}
      aria-invalid=${refused}
      aria-describedby=${refused ? `reason-${field}` : nothing}
      .value=${live(text)}
      @input=${(event: Event) => this.writing(field, (event.target as HTMLInputElement).value)}
      @change=${(event: Event) => this.written(field, (event.target as HTMLInputElement).value)}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === 'Escape') this.restore(field);
      }}
    />`;
  }

  private writing(field: FieldName, text: string): void {
    this.drafts.set(this.key(field), { text, asked: false, reason: this.draft(field)?.reason ?? null });
  }

  private written(field: FieldName, text: string): void {
    const { name } = this.card;
    this.drafts.set(this.key(field), { text, asked: true, reason: null });
    const change: Change = { kind: 'write', opening: name, field, text };
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `write-${Date.now()}`, change }, bubbles: true }));
  }

  private restore(field: FieldName): void {
    this.drafts.delete(this.key(field));
    this.requestUpdate();
  }
}

customElements.define('opening-line', OpeningLine);
