import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { footer, masthead } from '../parts/masthead';
import { EntryForm } from '../parts/entry-form';
import '../parts/other-entries';
import { newId, type NamedKey, type RecordScene, type TypedDay, type WrittenDay } from '../record-scene';
import { say } from '../words';

/** The site record: two numbers a day, the days written, and their correction. */
export class RecordPage extends EntryForm<TypedDay> {
  /** What a person opened does not close while a blank in it is emptied. */
  private unfolded = false;

  protected override render() {
    const { scene } = this;
    return html`
      ${masthead({ page: 'record', house: this.house }, scene.name, html`<p>${scene.standing}</p>`, nothing)}
      <main class="record">
        ${scene.trouble === null ? nothing : html`<p class="reason" role="alert">${scene.trouble}</p>`} ${this.form()}
        <section class="days" aria-labelledby="days-written">
          <h2 id="days-written">${say('web.record.days')}</h2>
          ${scene.days.length === 0 ? html`<p class="none">${say('web.record.none')}</p>` : nothing}
          <ol>
            ${repeat(
              scene.days,
              (day) => day.id,
              (day) => this.line(day),
            )}
          </ol>
          <other-entries .house=${this.house} .scene=${scene} @record-written=${(event: CustomEvent<RecordScene>) => (this.scene = event.detail)}></other-entries>
          <p class="kept">${scene.corrected} ${say('web.record.kept')}</p>
        </section>
      </main>
      ${footer()}
    `;
  }

  private form(): TemplateResult {
    const { typed, scene } = this;
    const corrected = scene.days.find((day) => day.id === typed.corrects);
    const tasks = [...(corrected?.done ?? []), ...scene.tasks];
    const more = typed.people + typed.hours + typed.lift + typed.notes !== '' || typed.stopped !== 'evening' || typed.done.length > 0;
    return html`
      <form class="a-day" aria-labelledby="a-day" @submit=${(event: Event) => this.send(event)}>
        <h2 id="a-day">${corrected === undefined ? say('web.record.today') : say('web.record.correcting', { date: corrected.dateInWords })}</h2>
        <div class="two-numbers">
          ${this.blank('date', say('web.record.day'), 'date')} ${this.blank('raised', say('web.record.raised'), 'text', 'decimal', say('web.record.raised-hint'))}
          ${this.blank('batches', say('web.record.batches'), 'text', 'decimal')}
        </div>
        <details ?open=${more || this.unfolded} @toggle=${(event: Event) => (this.unfolded = (event.target as HTMLDetailsElement).open)}>
          <summary>${say('web.record.more')}</summary>
          <div class="more">
            ${this.blank('people', say('web.record.people'), 'text', 'numeric')} ${this.blank('hours', say('web.record.hours'), 'text', 'decimal')}
            ${this.blank('lift', say('web.record.lift'), 'text', 'numeric')}
            <label class="stopped"
              >${say('web.record.stopped')}
              <select class="blank" name="stopped" .value=${typed.stopped} @change=${(event: Event) => this.take('stopped', (event.target as HTMLSelectElement).value)}>
                ${scene.stops.map((stop) => html`<option value=${stop.key} ?selected=${stop.key === typed.stopped}>${stop.name}</option>`)}
              </select></label
            >
            ${tasks.length === 0 ? nothing : html`<fieldset><legend>${say('web.record.done')}</legend>${tasks.map((task) => this.task(task))}</fieldset>`}
            <label class="notes">${say('web.record.notes')}<textarea name="notes" rows="2" maxlength="2000" .value=${typed.notes} @input=${(event: Event) => this.take('notes', (event.target as HTMLTextAreaElement).value)}></textarea></label>
          </div>
        </details>
        ${this.wrong === null ? nothing : html`<p class="reason" id="reason-day" role="alert">${this.wrong.sentence}</p>`}
        <p class="act-line">
          <button type="submit" class="write" ?disabled=${this.sending}>${say(corrected === undefined ? 'web.record.write' : 'web.record.write-correction')}</button>
          ${corrected === undefined
            ? nothing
            : html`<button type="button" @click=${() => this.begin()}>${say('web.record.leave')}</button>
                <button type="button" ?disabled=${this.sending} @click=${() => void this.post({ ...this.typed, struck: say('web.record.strike-why') })}>${say('web.record.strike')}</button>`}
          <span class="told" role="status">${this.told}</span>
        </p>
      </form>
    `;
  }

  private blank(name: 'date' | 'raised' | 'batches' | 'people' | 'hours' | 'lift', label: string, type: string, mode = 'text', hint = ''): TemplateResult {
    const refused = this.wrong?.blank === name;
    return html`<label class=${name}
      >${label}<input
        class="blank"
        type=${type}
        name=${name}
        inputmode=${type === 'date' ? nothing : mode}
        autocomplete="off"
        title=${hint === '' ? nothing : hint}
        aria-invalid=${refused ? 'true' : nothing}
        aria-describedby=${refused ? 'reason-day' : nothing}
        .value=${this.typed[name]}
        @input=${(event: Event) => this.take(name, (event.target as HTMLInputElement).value)}
    /></label>`;
  }

  private task(task: NamedKey): TemplateResult {
    const { done } = this.typed;
    return html`<label class="task"
      ><input
        type="checkbox"
        name="done"
        value=${task.key}
        .checked=${done.includes(task.key)}
        @change=${() => (this.typed = { ...this.typed, done: done.includes(task.key) ? done.filter((key) => key !== task.key) : [...done, task.key] })}
      />${task.name}</label
    >`;
  }

  private line(day: WrittenDay): TemplateResult {
    return html`<li data-day=${day.date} class=${day.id === this.typed.corrects ? 'in-hand' : ''}>
      <h3>${day.dateInWords}</h3>
      <p>${day.line}</p>
      <button type="button" aria-label=${say('web.record.correct-which', { date: day.dateInWords })} @click=${() => this.correct(day)}>${say('web.record.correct')}</button>
    </li>`;
  }

  private take(name: keyof TypedDay, value: string): void {
    this.typed = { ...this.typed, [name]: value };
  }

  /** An empty day, today where nothing is written of it. */
  protected override begin(): void {
    this.wrong = null;
    const written = this.scene.days.some((day) => day.date === this.scene.today);
    this.typed = { id: newId(), corrects: null, struck: null, date: written ? '' : this.scene.today, raised: '', batches: '', people: '', hours: '', lift: '', stopped: 'evening', done: [], notes: '' };
  }

  private correct(day: WrittenDay): void {
    this.wrong = null;
    this.told = '';
    const { date, raised, batches, people, hours, lift, stopped, notes } = day;
    this.typed = { id: newId(), corrects: day.id, struck: null, date, raised, batches, people, hours, lift, stopped, notes, done: day.done.map((task) => task.key) };
    void this.updateComplete.then(() => this.querySelector<HTMLInputElement>('[name=raised]')?.focus());
  }

  private send(event: Event): void {
    event.preventDefault();
    void this.post(this.typed);
  }

  protected override wrote(scene: RecordScene, typed: TypedDay): void {
    this.scene = scene;
    this.begin();
    this.told = say('web.record.written', { date: scene.days.find((day) => day.date === typed.date)?.dateInWords ?? typed.date });
  }
}

customElements.define('record-page', RecordPage);
