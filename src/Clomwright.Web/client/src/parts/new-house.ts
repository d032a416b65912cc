import { LitElement, html, nothing, type TemplateResult } from 'lit';
import type { HouseCard } from '../scene';
import { hrefOf } from '../places';
import { say } from '../words';

const shapes = ['round', 'oval', 'rounded-rectangle', 'path'] as const;

/** A house of one's own in three steps, or a copy of one that is there. Nothing is written before it is begun, and nothing is written over. */
export class NewHouse extends LitElement {
  static override properties = { houses: { attribute: false }, units: { state: true }, shape: { state: true }, copy: { state: true }, trouble: { state: true }, busy: { state: true } };

  declare houses: readonly HouseCard[];
  declare units: 'imperial' | 'metric';
  declare shape: (typeof shapes)[number];
  declare copy: string;
  declare trouble: { trouble: string; blank: string | null } | null;
  declare busy: boolean;

  constructor() {
    super();
    this.units = 'imperial';
    this.shape = 'round';
    this.copy = '';
    this.trouble = null;
    this.busy = false;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    return html`
      <form
        class="plot"
        @submit=${(event: Event) => {
          event.preventDefault();
          void this.begin();
        }}
      >
        <ol>
          <li><p class="form-line"><label>${say('web.new.called')} ${this.blank('name', say('web.new.called'))}</label></p>${this.reason('name')}</li>
          <li>
            <p class="form-line">
              <label>${say('web.new.begun')}
                <select class="blank" name="copy" @change=${(event: Event) => (this.copy = valueOf(event))}>
                  <option value="">${say('web.new.blank-plot')}</option>
                  ${this.houses.filter((house) => house.trouble === null).map((house) => html`<option value=${house.key}>${say('web.new.copy-of', { name: house.name })}</option>`)}
                </select></label>
              ${
                this.copy !== ''
                  ? nothing
                  : html`<label>${say('web.new.in-units')}
                      <select class="blank" name="units" @change=${(event: Event) => (this.units = valueOf(event) as 'imperial' | 'metric')}>
                        ${(['imperial', 'metric'] as const).map((one) => html`<option value=${one}>${say(`web.new.${one}`)}</option>`)}
                      </select></label>`
              }
            </p>
            ${this.reason('copy')}
          </li>
          ${
            this.copy !== ''
              ? nothing
              : html`<li>
                  <p class="form-line">
                    <label>${say('web.new.shape')}
                      <select class="blank" name="shape" @change=${(event: Event) => (this.shape = valueOf(event) as NewHouse['shape'])}>
                        ${shapes.map((one) => html`<option value=${one}>${say(`web.word.${one}`)}</option>`)}
                      </select></label>
                    <label>${say(this.shape === 'round' ? 'web.new.across' : 'web.new.long')} ${this.blank('length', say('web.new.long'))}</label>
                    ${this.shape === 'round' ? nothing : html`<label>${say('web.new.wide')} ${this.blank('width', say('web.new.wide'))}</label>`}
                    <span class="hint-line">${say(this.units === 'metric' ? 'web.new.such-as-metric' : 'web.new.such-as')}</span>
                  </p>
                  ${this.reason('length')} ${this.reason('width')}
                </li>`
          }
        </ol>
        <p><button type="submit" class="act" ?disabled=${this.busy}>${say('web.new.begin')}</button> <span class="hint-line">${say('web.new.kept')}</span></p>
        ${this.reason(null)}
      </form>
    `;
  }

  private blank(name: string, label: string): TemplateResult {
    const refused = this.trouble?.blank === name;
    return html`<input class="blank" type="text" autocomplete="off" spellcheck="false" name=${name} aria-label=${label} aria-invalid=${refused} aria-describedby=${refused ? `reason-new-${name}` : nothing} />`;
  }

  private reason(blank: string | null): TemplateResult | typeof nothing {
    if (this.trouble === null || this.trouble.blank !== blank) return nothing;
    return html`<p class="reason" id="reason-new-${blank ?? 'house'}" role="alert">${this.trouble.trouble}</p>`;
  }

  private async begin(): Promise<void> {
    const written = (name: string): string | null => (this.querySelector<HTMLInputElement>(`input[name=${name}]`) ?? null)?.value ?? null;
    this.busy = true;
    try {
      const answer = await fetch('/api/houses', {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ name: written('name'), units: this.units, shape: this.shape, length: written('length'), width: written('width'), copy: this.copy === '' ? null : this.copy }),
      });
      const body = (await answer.json()) as { key?: string; trouble?: string; blank?: string | null };
      if (answer.ok && body.key !== undefined) this.dispatchEvent(new CustomEvent('go-to', { detail: hrefOf({ page: 'ground', house: body.key }), bubbles: true }));
      else this.trouble = { trouble: body.trouble ?? say('web.line.lost'), blank: body.blank ?? null };
    } catch {
      this.trouble = { trouble: say('web.line.lost'), blank: null };
    }
    this.busy = false;
  }
}

function valueOf(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

customElements.define('new-house', NewHouse);
