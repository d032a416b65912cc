import { LitElement, html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { say } from '../words';

/** The day looked at: a peg on a tape, the lift before and after, or a day written. */
export class DaySlider extends LitElement {
  static override properties = { water: { attribute: false }, day: { type: Number }, reason: { state: true } };

  /** The days and when lifts are first shown. */
  declare water: { readonly days: readonly string[]; readonly lifts: readonly { readonly shown: number | null }[] };
  declare day: number;
  declare reason: string | null;

  private draft: string | null = null;

  constructor() {
    super();
    this.reason = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const last = this.water.days.length - 1;
    return html`
      <div class="day" role="group" aria-label=${say('web.water.day-blank')}>
        <label class="label" for="day-written">${say('web.water.day-short')}</label>
        <button type="button" class="step" aria-label=${say('web.water.before')} @click=${() => this.go(this.liftBefore())}><span aria-hidden="true">${'\u2212'}</span></button>
        <input
          id="day-written"
          class="blank"
          type="text"
          inputmode="numeric"
          autocomplete="off"
          name="day"
          aria-invalid=${this.reason !== null}
          aria-describedby=${this.reason === null ? nothing : 'reason-day'}
          .value=${live(this.draft ?? String(this.day))}
          @input=${(event: Event) => (this.draft = valueOf(event))}
          @change=${(event: Event) => this.written(valueOf(event))}
        />
        <button type="button" class="step" aria-label=${say('web.water.after')} @click=${() => this.go(this.liftAfter())}><span aria-hidden="true">+</span></button>
        <input
          class="tape"
          type="range"
          min="0"
          max=${last}
          step="1"
          aria-label=${say('web.water.day-blank')}
          aria-valuetext=${this.water.days[this.day] ?? nothing}
          .value=${live(String(this.day))}
          @input=${(event: Event) => this.go(Number(valueOf(event)))}
        />
        ${this.reason === null ? nothing : html`<p class="reason" id="reason-day" role="alert">${this.reason}</p>`}
      </div>
    `;
  }

  private written(text: string): void {
    const day = /^\s*\d{1,5}\s*$/.test(text) ? Number(text) : -1;
    const last = this.water.days.length - 1;
    if (day < 0 || day > last) {
      this.reason = say('web.water.not-day', { text: text.slice(0, 40), last });
      return;
    }
    this.go(day);
  }

  private liftAfter(): number {
    const laid = this.water.lifts.flatMap((lift) => (lift.shown !== null && lift.shown > this.day ? [lift.shown] : []));
    return laid[0] ?? this.water.days.length - 1;
  }

  private liftBefore(): number {
    return this.water.lifts.flatMap((lift) => (lift.shown !== null && lift.shown < this.day ? [lift.shown] : [])).at(-1) ?? 0;
  }

  private go(day: number): void {
    this.draft = null;
    this.reason = null;
    this.dispatchEvent(new CustomEvent('go-to-day', { detail: Math.min(Math.max(day, 0), this.water.days.length - 1), bubbles: true }));
  }
}

function valueOf(event: Event): string {
  return (event.target as HTMLInputElement).value;
}

customElements.define('day-slider', DaySlider);
