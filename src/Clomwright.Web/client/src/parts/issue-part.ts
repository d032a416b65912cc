import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import type { IssueList, IssuePart, IssueScene } from '../arrived-scene';
import { hrefOf, papersAddress } from '../places';
import { newId } from '../record-scene';
import { say } from '../words';

/** How long a house rests before its papers are drawn, ms. */
const rest = 700;

/** Which papers are other ones than those handed out, handing them out with the next letter, and what to take down. Every sheet is drawn to know that, so it is asked for. */
export class IssueParts extends LitElement {
  static override properties = { house: {}, of: {}, paper: {}, scene: { state: true }, to: { state: true }, wrong: { state: true }, busy: { state: true }, handed: { state: true } };

  declare house: string;
  /** Changes when the house does: then it is looked at anew. */
  declare of: string;
  declare paper: string | undefined;
  declare scene: IssueScene | null;
  declare to: string;
  declare wrong: string | null;
  declare busy: boolean;
  declare handed: boolean;

  /** Of the entry to come: the same sent again is the same. */
  private entry = newId();
  private asked = 0;
  private soon = 0;

  constructor() {
    super();
    this.scene = this.wrong = null;
    this.busy = this.handed = false;
    this.to = say('web.issue.to-crew');
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    // What was compared was another house.
    if (changed.has('house') || changed.has('of')) this.scene = this.wrong = null;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('house') || changed.has('of')) {
      this.handed = false;
      const folded = this.closest<HTMLDetailsElement>('details:not([open])');
      clearTimeout(this.soon);
      // The house may become another again at once, and every sheet is drawn for it.
      if (folded === null) this.soon = window.setTimeout(() => void this.look(), changed.get('of') === undefined ? 0 : rest);
      else folded.addEventListener('toggle', () => void this.look(), { once: true });
    }
  }

  protected override render() {
    const { scene } = this;
    if (scene === null) return this.wrong === null ? html`<p class="working" role="status">${say('web.issue.looking')}</p>` : this.reason();
    const shown = scene.last !== null && (this.handed || !scene.now.changes) ? scene.last : scene.now;
    return html`
      <p class="issue-line" role="status" data-letter=${shown.letter}>${shown === scene.now ? nothing : html`${scene.now.line} `}<b>${shown.line}</b></p>
      ${this.busy ? html`<p class="working" role="status">${say('web.issue.looking')}</p>` : nothing}
      ${shown === scene.now ? this.form(scene) : this.prints(scene, shown)}
      ${this.lists(scene, shown)}
    `;
  }

  private form(scene: IssueScene): TemplateResult {
    return html`
      <form
        class="hand-out"
        @submit=${(event: Event) => {
          event.preventDefault();
          void this.send(scene);
        }}
      >
        <label>${say('web.issue.to')} <input class="blank" type="text" name="issue-to" autocomplete="off" maxlength="200" aria-invalid=${this.wrong !== null} aria-describedby=${this.wrong === null ? nothing : 'reason-issue'} .value=${this.to} @input=${(event: Event) => (this.to = (event.target as HTMLInputElement).value)} /></label>
        <label>${say('web.papers.on')}
          <select class="blank" name="issue-paper" @change=${(event: Event) => this.on((event.target as HTMLSelectElement).value)}>
            ${scene.sizes.map((size) => html`<option value=${size} ?selected=${size === scene.paper}>${size}</option>`)}
          </select></label>
        <button type="submit" class="write" ?disabled=${this.busy}>${say('web.issue.hand-out', { letter: scene.next })}</button>
      </form>
      ${scene.saved ? nothing : html`<p class="hint-line">${say('web.issue.save-first')}</p>`}
      ${this.reason()}
    `;
  }

  private reason(): TemplateResult | typeof nothing {
    return this.wrong === null ? nothing : html`<p class="reason" id="reason-issue" role="alert">${this.wrong}</p>`;
  }

  private prints(scene: IssueScene, list: IssueList): TemplateResult {
    const { house } = this;
    const { paper } = scene;
    const set = list.letter;
    return html`<p class="issue-prints">
      ${
        list.sheets.length > 0
          ? html`<a class="act" href=${papersAddress(house, 'changed.pdf', paper, set)} target="_blank">${say('web.issue.print-changed')}</a>
              <a class="act" href=${hrefOf({ page: 'print', house, of: 'changed', paper, set })} target="_blank">${say('web.papers.print-these')}</a>`
          : nothing
      }
      <a class="act" href=${papersAddress(house, 'site.pdf', paper, set)} target="_blank">${say('web.papers.all-site')}</a>
      <a class="act" href=${papersAddress(house, 'office.pdf', paper, set)} target="_blank">${say('web.papers.all-office')}</a>
      <a class="act" href=${papersAddress(house, 'templates.pdf', paper, set)} target="_blank">${say('web.papers.all-templates')}</a>
    </p>`;
  }

  private lists(scene: IssueScene, list: IssueList): TemplateResult {
    const isHanded = list !== scene.now;
    return html`<div class="issue-lists">
      ${
        list.sheets.length === 0
          ? nothing
          : html`<section class="hang-up" aria-label=${say('web.issue.hang-up', { letter: list.letter })}>
              <h3>${say('web.issue.hang-up', { letter: list.letter })}</h3>
              ${list.sheets.map((part) => this.pile(part, part.heading, (sheet) => html`${this.titled(part, sheet, scene.paper, isHanded ? list.letter : undefined)} <span class="mark">${sheet.mark}</span>`))}
            </section>`
      }
      ${
        list.takeDown.length === 0
          ? nothing
          : html`<section class="take-down" aria-label=${say('web.issue.take-down')}>
              <h3>${say('web.issue.take-down')}</h3>
              ${list.takeDown.map((part) => this.pile(part, say(`web.issue.down.${part.part}`), (sheet) => html`${sheet.title} <span class="letter">${say('web.issue.letter', { letter: sheet.letter })}</span>`))}
            </section>`
      }
    </div>`;
  }

  private pile(part: IssuePart, heading: string, line: (sheet: IssuePart['sheets'][number]) => TemplateResult): TemplateResult {
    return html`<details data-part=${part.part} ?open=${part.part === 'site'}>
      <summary><h4>${heading} (${part.sheets.reduce((sum, sheet) => sum + sheet.count, 0)})</h4></summary>
      <ul>${part.sheets.map((sheet) => html`<li data-sheet=${sheet.key} data-count=${sheet.count}><b>${sheet.number}</b> <span>${line(sheet)}</span></li>`)}</ul>
    </details>`;
  }

  /** Templates have no page of their own to be looked at. */
  private titled(part: IssuePart, sheet: IssuePart['sheets'][number], paper: string, set: string | undefined): TemplateResult {
    return part.part === 'templates' ? html`${sheet.title}` : html`<a href=${hrefOf({ page: 'sheet', house: this.house, of: sheet.key, paper, set })} target="_blank">${sheet.title}</a>`;
  }

  private on(paper: string): void {
    this.paper = paper;
    void this.look();
  }

  private get address(): string {
    return `/api/houses/${encodeURIComponent(this.house)}/issue`;
  }

  private async look(): Promise<void> {
    await this.ask(() => fetch(this.paper === undefined ? this.address : `${this.address}?${new URLSearchParams({ paper: this.paper })}`));
  }

  private async send(scene: IssueScene): Promise<void> {
    const body = JSON.stringify({ id: this.entry, to: this.to, paper: scene.paper });
    if (!(await this.ask(() => fetch(this.address, { method: 'POST', headers: { 'content-type': 'application/json' }, body })))) return;
    this.entry = newId();
    this.handed = true;
  }

  private async ask(send: () => Promise<Response>): Promise<boolean> {
    const asked = ++this.asked;
    this.busy = true;
    this.wrong = null;
    let fine = false;
    try {
      const answer = await send();
      const body = (await answer.json()) as IssueScene & { trouble?: string };
      if (asked !== this.asked) return false;
      fine = answer.ok;
      if (fine) this.scene = body;
      else this.wrong = body.trouble ?? say('web.line.lost');
    } catch {
      if (asked === this.asked) this.wrong = say('web.line.lost');
    }
    if (asked === this.asked) this.busy = false;
    return fine;
  }
}

customElements.define('issue-part', IssueParts);
