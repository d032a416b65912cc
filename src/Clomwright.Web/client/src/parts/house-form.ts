import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { FormAdd, FormAnswer, FormPart } from '../form-scene';
import type { Change, Refusal } from '../scene';
import { say } from '../words';
import './add-part';
import './earth-blank';

/** While a house is dragged a form that is there already waits this long for it to rest, ms. */
const rest = 120;

/** Parts of the house as sentences with blanks. It asks for them itself, whenever the house has changed and rests. */
export class HouseForm extends LitElement {
  static override properties = { house: {}, of: {}, revision: { type: Number }, settled: { type: Boolean }, refusal: { attribute: false }, untitled: { type: Boolean }, answer: { state: true } };

  declare house: string;
  /** Paths of the parts, with spaces between them. */
  declare of: string;
  declare revision: number;
  declare settled: boolean;
  declare refusal: Refusal | null;
  /** The first title stands elsewhere. */
  declare untitled: boolean;
  declare answer: FormAnswer | null;

  private asked = '';
  private drawer: HTMLDetailsElement | null = null;
  private readonly opened = (): void => this.requestUpdate();
  private waiting = 0;
  private gestures = 0;
  private readonly started = Date.now();

  constructor() {
    super();
    this.answer = null;
    this.untitled = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.drawer = this.closest('details');
    this.drawer?.addEventListener('toggle', this.opened);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.drawer?.removeEventListener('toggle', this.opened);
    clearTimeout(this.waiting);
    this.asked = '';
  }

  /** While something is in hand the house is another with every move: nothing of it is asked for or shown here until it rests. */
  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return this.settled || changed.size > 1 || !changed.has('revision');
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if ((changed.has('of') && changed.get('of') !== undefined) || (changed.has('house') && changed.get('house') !== undefined)) this.answer = null;
    const wanted = `${this.house}/${this.revision}/${this.of}`;
    if (!this.settled || wanted === this.asked || this.of === '' || this.shut) return;
    this.asked = wanted;
    clearTimeout(this.waiting);
    this.waiting = window.setTimeout(() => void this.fetched(wanted), this.answer === null ? 0 : rest);
  }

  protected override updated(): void {
    const there = this.answer !== null || this.shut;
    if (there === this.hasAttribute('data-there')) return;
    this.toggleAttribute('data-there', there);
    this.dispatchEvent(new CustomEvent('form-there', { bubbles: true }));
  }

  private async fetched(wanted: string): Promise<void> {
    try {
      const query = this.of.split(' ').map((path) => `of=${encodeURIComponent(path)}`);
      const answer = await fetch(`/api/houses/${encodeURIComponent(this.house)}/form?${query.join('&')}`);
      if (!answer.ok || this.asked !== wanted) return;
      this.answer = (await answer.json()) as FormAnswer;
    } catch {
      if (this.asked === wanted) this.asked = '';
    }
  }

  protected override render() {
    if (this.answer === null && this.shut) return nothing;
    if (this.answer === null) return html`<p class="wait">${say('web.wait')}</p>`;
    return this.answer.parts.map((part, i) => this.laid(part, 3, this.untitled && i === 0));
  }

  /** It lies in a drawer that is shut. */
  private get shut(): boolean {
    return this.drawer?.open === false;
  }

  /** The house has rested and this is of it as it is. */
  private get atRest(): boolean {
    return this.settled && this.answer !== null && this.answer.revision >= this.revision;
  }

  private laid(part: FormPart, level: number, untitled: boolean): TemplateResult {
    const reason = this.refusal?.blank === `part.${part.path}` ? this.refusal.sentence : null;
    const empty = part.lines.length === 0 && part.inner.length === 0 && part.adds.length === 0;
    if (empty) return html``;
    return html`<div class="form-part level-${level}" data-part=${part.path}>
      ${untitled || onlyAdds(part) ? nothing : html`<div class="form-head">${level === 3 ? html`<h3>${part.title}</h3>` : html`<h4>${part.title}</h4>`}${this.acts(part)}</div>`}
      <div class="form-says">
        ${part.lines.map(
          (line) => html`<p class="form-line">
            ${line.map((piece) => (piece.blank === null ? piece.words : html`<earth-blank class="in-line" bare .card=${piece.blank} .refusal=${this.refusal} .settled=${this.atRest}></earth-blank>`))}
          </p>`,
        )}
        ${part.said.map((sentence) => html`<p class="reason">${sentence}</p>`)} ${untitled ? this.acts(part) : nothing}
        ${reason === null ? nothing : html`<p class="reason" role="alert">${reason}</p>`}
        ${repeat(
          part.inner,
          (inner) => inner.path,
          (inner) => this.laid(inner, 4, false),
        )}
        ${part.adds.length === 0 ? nothing : this.adds(part.adds, part.title)}
      </div>
    </div>`;
  }

  private acts(part: FormPart): TemplateResult | typeof nothing {
    if (!part.canGo) return nothing;
    const blank = `part.${part.path}`;
    return html`<p class="form-acts">
      ${
        part.ordered
          ? html`<button type="button" class="act" aria-label=${say('web.form.up-of', { part: part.title })} @click=${() => this.send({ kind: 'shift', path: part.path, by: -1, blank })}>${say('web.form.up')}</button>
              <button type="button" class="act" aria-label=${say('web.form.down-of', { part: part.title })} @click=${() => this.send({ kind: 'shift', path: part.path, by: 1, blank })}>${say('web.form.down')}</button>`
          : nothing
      }
      <button type="button" class="act" aria-label=${say('web.form.take-out-of', { part: part.title })} @click=${() => this.send({ kind: 'take-out', path: part.path, blank })}>${say('web.form.take-out')}</button>
    </p>`;
  }

  private adds(adds: readonly FormAdd[], title: string): TemplateResult {
    return html`<add-part .adds=${adds} .of=${title} .refusal=${this.refusal} .settled=${this.atRest}></add-part>`;
  }

  private send(change: Change): void {
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `form-${++this.gestures}-${this.started}`, change }, bubbles: true }));
  }
}

/** It is not there and may be added: that alone says what it is. */
function onlyAdds(part: FormPart): boolean {
  return part.lines.length === 0 && part.inner.length === 0;
}

customElements.define('house-form', HouseForm);
