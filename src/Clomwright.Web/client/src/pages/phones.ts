import { LitElement, html, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';
import { footer, masthead } from '../parts/masthead';
import { say } from '../words';

interface PhonesScene {
  name: string;
  addresses: string[];
  isOpen: boolean;
  trouble: string | null;
  phones: { id: string; name: string; role: string; house: string; admitted: string; seen: string }[];
}

interface ShownCode {
  link: string;
  squares: string[];
  minutes: number;
  role: 'reader' | 'logger';
}

const lookAgain = 3000;

/** Which phones are let in, a code for the next one, and an end to it. */
export class PhonesPage extends LitElement {
  static override properties = { house: {}, scene: { state: true }, code: { state: true }, told: { state: true }, trouble: { state: true } };

  declare house: string;
  declare scene: PhonesScene | null;
  declare code: ShownCode | null;
  declare told: string;
  declare trouble: string | null;
  private timer = 0;

  constructor() {
    super();
    this.scene = this.code = this.trouble = null;
    this.told = '';
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.timer = window.setInterval(() => document.visibilityState === 'visible' && void this.look(), lookAgain);
    void this.look();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.timer);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('house')) this.code = null;
  }

  protected override render() {
    const { scene } = this;
    return html`
      ${masthead({ page: 'phones', house: this.house }, this.scene?.name ?? '', nothing, nothing)}
      <main class="phones">
        <section class="let-in" aria-labelledby="let-in">
          <h2 id="let-in">${say('web.phones.let-in')}</h2>
          ${scene === null ? html`<p>${say('web.wait')}</p>` : scene.addresses.length === 0 ? this.off() : this.invitation(scene)}
          ${this.trouble === null ? nothing : html`<p class="reason" role="alert">${this.trouble}</p>`}
        </section>
        <section class="let-in-already" aria-labelledby="phones">
          <h2 id="phones">${say('web.phones.list')}</h2>
          ${scene?.trouble ? html`<p class="reason">${scene.trouble}</p>` : nothing}
          ${scene === null || scene.phones.length > 0 ? nothing : html`<p>${say('web.phones.none')}</p>`}
          <ul>
            ${scene?.phones.map(
              (phone) => html`<li>
                <div>
                  <h3>${phone.name}</h3>
                  <p>${phone.role} · ${phone.house}</p>
                  <p class="hint-how">${say('web.phones.seen', { admitted: phone.admitted, seen: phone.seen })}</p>
                </div>
                <button type="button" class="act" aria-label=${say('web.phones.revoke-which', { name: phone.name })} @click=${() => void this.revoke(phone.id, phone.name)}>${say('web.phones.revoke')}</button>
              </li>`,
            )}
          </ul>
          <p class="told" role="status">${this.told}</p>
          <p class="note-line">${say('web.phones.may')}</p>
          <p class="note-line">${say('web.phones.open')}</p>
        </section>
      </main>
      ${footer()}
    `;
  }

  private off(): TemplateResult {
    return html`<p>${say('web.phones.off')}</p>
      <p class="act-line"><button type="button" class="write" @click=${() => void this.door('POST')}>${say('web.phones.open-door')}</button></p>
      <p class="hint-how">${say('web.phones.how')} <code>${say('web.phones.how-command')}</code></p>`;
  }

  private invitation(scene: PhonesScene): TemplateResult {
    return html`<p>${say('web.phones.on', { addresses: scene.addresses.join(', ') })}</p>
      <form @submit=${(event: Event) => void this.invite(event)}>
        <fieldset>
          <legend>${say('web.phones.as')}</legend>
          <label><input type="radio" name="role" value="reader" checked />${say('web.phones.as-reader')}</label>
          <label><input type="radio" name="role" value="logger" />${say('web.phones.as-logger')}</label>
        </fieldset>
        ${scene.addresses.length === 1
          ? nothing
          : html`<label class="network">${say('web.phones.addresses')}<select class="blank" name="address">${scene.addresses.map((address) => html`<option value=${address}>${address}</option>`)}</select></label>`}
        <p class="act-line"><button type="submit" class="write">${say('web.phones.invite')}</button> <button type="button" class="act" @click=${() => void this.door('DELETE')}>${say('web.phones.shut-door')}</button></p>
      </form>
      ${this.code === null ? nothing : scene.isOpen ? this.shown(this.code) : html`<p role="status">${say('web.phones.code-used')}</p>`}`;
  }

  private shown(code: ShownCode): TemplateResult {
    const wide = code.squares.length + 8;
    const dark = code.squares.flatMap((row, y) => [...row].map((square, x) => (square === '1' ? `M${x + 4} ${y + 4}h1v1h-1z` : ''))).join('');
    return html`<div class="code">
      <svg viewBox="0 0 ${wide} ${wide}" role="img" aria-label=${say('web.phones.code-alt')} shape-rendering="crispEdges">${svg`<rect width=${wide} height=${wide} fill="#fff" /><path d=${dark} fill="#000" />`}</svg>
      <div>
        <p><b>${say(`web.phones.code.${code.role}`)}</b></p>
        <p>${say('web.phones.code-how', { minutes: code.minutes })}</p>
        <p class="hint-how">${say('web.phones.code-link')}<br /><span class="address">${code.link}</span></p>
      </div>
    </div>`;
  }

  /** Opens the way for phones until the program ends, or shuts it. */
  private async door(method: 'POST' | 'DELETE'): Promise<void> {
    this.code = null;
    this.told = '';
    await this.ask(`/api/phones/door?house=${encodeURIComponent(this.house)}`, method);
  }

  private async look(): Promise<void> {
    await this.ask(`/api/phones?house=${encodeURIComponent(this.house)}`);
    if (this.scene !== null) document.title = say('web.title.phones', { name: this.scene.name });
  }

  private async invite(event: Event): Promise<void> {
    event.preventDefault();
    const form = new FormData(event.target as HTMLFormElement);
    this.told = '';
    const code = await this.ask<ShownCode>('/api/phones/code', 'POST', { house: this.house, role: form.get('role'), address: form.get('address') });
    if (code === null) return;
    await this.look();
    this.code = code;
  }

  private async revoke(id: string, name: string): Promise<void> {
    if ((await this.ask(`/api/phones/${id}?house=${encodeURIComponent(this.house)}`, 'DELETE')) !== null) this.told = say('web.phones.revoked', { name });
  }

  private async ask<T = PhonesScene>(address: string, method = 'GET', asked?: unknown): Promise<T | null> {
    try {
      const answer = await fetch(address, { method, ...(asked === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(asked) }) });
      const body = (await answer.json()) as T & { trouble?: string | null };
      this.trouble = answer.ok ? null : (body.trouble ?? say('web.line.lost'));
      if (answer.ok && 'phones' in (body as object)) this.scene = body as unknown as PhonesScene;
      return answer.ok ? body : null;
    } catch {
      this.trouble = say('web.line.lost');
      return null;
    }
  }
}

customElements.define('phones-page', PhonesPage);
