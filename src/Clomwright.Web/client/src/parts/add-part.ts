import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { FormAdd, FormBlank } from '../form-scene';
import type { Change, Refusal } from '../scene';
import { say } from '../words';

/** What may be added to a part of the house: as it is, in one of several ways, or with what has to be known of it first. */
export class AddPart extends LitElement {
  static override properties = { adds: { attribute: false }, of: {}, refusal: { attribute: false }, settled: { type: Boolean }, way: { state: true }, fixed: { attribute: false } };

  declare adds: readonly FormAdd[];
  /** What it is added to, read aloud. */
  declare of: string;
  declare refusal: Refusal | null;
  declare settled: boolean;
  declare way: string;
  /** Written without a blank. */
  declare fixed: Record<string, string>;

  private readonly written = new Map<string, string>();
  private asked = false;
  private reason: { sentence: string; within: string | null } | null = null;
  private gestures = 0;
  private readonly started = Date.now();

  constructor() {
    super();
    this.of = this.way = '';
    this.fixed = {};
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.settled || !this.asked) return;
    this.asked = false;
    this.reason = this.refusal?.blank === this.blank ? this.refusal : null;
    if (this.reason === null) this.written.clear();
  }

  private get add(): FormAdd {
    return this.adds.find((add) => add.way === this.way) ?? this.adds[0]!;
  }

  /** Two rows that add to one list are told apart by what is written without a blank. */
  private get blank(): string {
    return [`add.${this.add.path}`, ...Object.values(this.fixed)].join('.');
  }

  protected override render() {
    const { add } = this;
    const id = `reason-${this.blank.replaceAll(/[^a-z0-9-]/gi, '-')}`;
    const form = html`
      <form
        class="add-part"
        data-add=${add.path}
        aria-label=${add.asks.length === 0 ? nothing : [this.of, add.label].filter(Boolean).join(': ')}
        @submit=${(event: Event) => {
          event.preventDefault();
          this.send(add);
        }}
      >
        ${
          this.adds.length < 2
            ? nothing
            : html`<select class="blank" name="way" aria-label=${this.of} .value=${live(add.way)} @change=${(event: Event) => (this.way = valueOf(event))}>
                ${this.adds.map((one) => html`<option value=${one.way} ?selected=${one.way === add.way}>${one.label}</option>`)}
              </select>`
        }
        ${add.asks.map((ask) => this.ask(ask, id))}
        <button type="submit" class="act">${this.adds.length < 2 ? add.label : say('web.form.add')}</button>
        ${this.reason === null ? nothing : html`<p class="reason" id=${id} role="alert">${this.reason.sentence}</p>`}
      </form>
    `;
    // What asks for much is opened when it is wanted; a row that stands for one question is there at once.
    return add.asks.length > 3 && Object.keys(this.fixed).length === 0 ? html`<details><summary>${add.label}</summary>${form}</details>` : form;
  }

  private ask(ask: FormBlank, reason: string): TemplateResult {
    const text = this.written.get(ask.key) ?? ask.text;
    const refused = this.reason !== null && (this.reason.within === null || this.reason.within === kebab(ask.key));
    const list = ask.suggestions.length === 0 ? null : `known-${this.blank.replaceAll(/[^a-z0-9-]/gi, '-')}-${ask.key}`;
    return html`<label
      ><span class="label">${ask.label}</span>
      ${
        ask.choices.length > 0
          ? html`<select class="blank" name=${ask.key} aria-invalid=${refused} aria-describedby=${refused ? reason : nothing} .value=${live(text)} @change=${(event: Event) => this.written.set(ask.key, valueOf(event))}>
              ${ask.choices.map((choice) => html`<option value=${choice.value} ?selected=${choice.value === text}>${choice.label}</option>`)}
            </select>`
          : html`<input class="blank" type="text" autocomplete="off" spellcheck="false" name=${ask.key} list=${list ?? nothing} aria-invalid=${refused} aria-describedby=${refused ? reason : nothing} .value=${live(text)} @input=${(event: Event) => this.written.set(ask.key, valueOf(event))} />`
      }
      ${list === null ? nothing : html`<datalist id=${list}>${ask.suggestions.map((known) => html`<option value=${known}></option>`)}</datalist>`}</label
    >`;
  }

  private send(add: FormAdd): void {
    const texts = { ...Object.fromEntries(add.asks.map((ask) => [ask.key, this.written.get(ask.key) ?? ask.text])), ...this.fixed };
    const change: Change = { kind: 'add-part', path: add.path, way: add.way, texts, blank: this.blank };
    this.asked = true;
    this.dispatchEvent(new CustomEvent('change-house', { detail: { gesture: `add-${add.path}-${++this.gestures}-${this.started}`, change }, bubbles: true }));
  }
}

/** A key as words of it are called. */
function kebab(key: string): string {
  return key.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function valueOf(event: Event): string {
  return (event.target as HTMLInputElement | HTMLSelectElement).value;
}

customElements.define('add-part', AddPart);
