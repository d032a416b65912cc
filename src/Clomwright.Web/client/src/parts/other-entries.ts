import { html, nothing, type TemplateResult } from 'lit';
import { newId, type RecordScene, type TypedOther } from '../record-scene';
import { hrefOf } from '../places';
import { say } from '../words';
import { EntryForm } from './entry-form';

const kinds = ['test', 'delivery', 'as-built'] as const;

/** What the record holds beside days of work, and writing it: tests, what came, what was measured in the wall. */
export class OtherEntries extends EntryForm<TypedOther> {
  protected override render() {
    const { scene, typed } = this;
    return html`
      ${scene.others.length === 0 ? nothing : html`<h3>${say('web.record.others')}</h3>`}
      <ul class="others">
        ${scene.others.map(
          (other) => html`<li>
            <span>${other.line}</span>
            ${other.canStrike ? html`<button type="button" ?disabled=${this.sending} aria-label=${say('web.record.strike-which', { what: other.line })} @click=${() => void this.post({ ...typed, id: newId(), corrects: other.id, struck: say('web.record.strike-why') })}>${say('web.record.strike')}</button>` : nothing}
          </li>`,
        )}
      </ul>
      <details class="other-entry">
        <summary>${say('web.record.other')}</summary>
        <form
          @submit=${(event: Event) => {
            event.preventDefault();
            void this.post(this.typed);
          }}
        >
          <div class="two">
            ${this.choice('kind', say('web.record.other-kind'), kinds.map((kind) => [kind, say(`web.record.kind.${kind}`)]))} ${this.blank('date', say('web.record.day'))}
          </div>
          ${this.blanks()} ${this.wrong === null ? nothing : html`<p class="reason" id="reason-other" role="alert">${this.wrong.sentence}</p>`}
          <p class="act-line"><button type="submit" class="write" ?disabled=${this.sending}>${say('web.record.write')}</button></p>
        </form>
      </details>
      <p class="told-other" role="status">${this.told}</p>
    `;
  }

  private blanks(): TemplateResult {
    const { parts, measures } = this.scene;
    switch (this.typed.kind) {
      case 'test':
        return html`<div class="two">${this.blank('what', say('web.record.test'))} ${this.blank('of', say('web.record.test-of'))}</div>${this.blank('found', say('web.record.test-result'))}`;
      case 'delivery':
        return html`<div class="two">${this.blank('what', say('web.record.came'))} ${this.blank('found', say('web.record.came-amount'))}</div>
          ${this.choice('asOrdered', say('web.record.as-ordered'), ['', 'yes', 'no'].map((key) => [key, say(`web.record.as-ordered.${key || 'open'}`)]))}
          ${this.typed.asOrdered === 'no' ? html`<p class="re-plan"><a href=${hrefOf({ page: 'arrived', house: this.house })}>${say('web.arrived.from-record')}</a></p>` : nothing}`;
      default:
        return html`<div class="two">${this.choice('what', say('web.record.part'), ['', ...parts].map((part) => [part, part]))} ${this.choice('measured', say('web.record.measure'), [['', ''], ...measures.map((m): [string, string] => [m.key, m.name])])}</div>
          ${this.blank('found', say('web.record.measure-found'))}`;
    }
  }

  private blank(name: 'date' | 'what' | 'of' | 'found', label: string): TemplateResult {
    const refused = this.wrong?.blank === name;
    return html`<label>${label}<input class="blank" type=${name === 'date' ? 'date' : 'text'} name=${`other-${name}`} autocomplete="off" maxlength="200" aria-invalid=${refused ? 'true' : nothing} aria-describedby=${refused ? 'reason-other' : nothing} .value=${this.typed[name]} @input=${(event: Event) => this.take(name, event)} /></label>`;
  }

  private choice(name: 'kind' | 'asOrdered' | 'measured' | 'what', label: string, choices: (readonly [string, string] | string[])[]): TemplateResult {
    return html`<label>${label}<select class="blank" name=${`other-${name}`} @change=${(event: Event) => this.take(name, event)}>${choices.map(([key, words]) => html`<option value=${key!} ?selected=${key === this.typed[name]}>${words}</option>`)}</select></label>`;
  }

  private take(name: keyof TypedOther, event: Event): void {
    const { value } = event.target as HTMLInputElement;
    if (name === 'kind') this.begin(value as TypedOther['kind']);
    else this.typed = { ...this.typed, [name]: value };
  }

  protected override begin(kind: TypedOther['kind'] = 'test'): void {
    this.wrong = null;
    this.typed = { id: newId(), kind, date: this.typed?.date ?? this.scene.today, what: '', of: '', found: '', measured: '', asOrdered: '' };
  }

  protected override wrote(scene: RecordScene, typed: TypedOther): void {
    if (typed.struck === undefined) this.begin(typed.kind);
    this.told = typed.struck === undefined ? say('web.record.written-other') : say('web.record.struck-other');
    this.dispatchEvent(new CustomEvent<RecordScene>('record-written', { detail: scene }));
  }
}

customElements.define('other-entries', OtherEntries);
