import { LitElement, html, nothing } from 'lit';
import { say } from '../words';

interface Choice {
  now: string;
  languages: { code: string; name: string }[];
}

/** In which language pages and papers speak; chosen once, it is kept for this user. */
export class LanguageChoice extends LitElement {
  static override properties = { choice: { state: true }, trouble: { state: true } };

  declare choice: Choice | null;
  declare trouble: string | null;

  constructor() {
    super();
    this.choice = this.trouble = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.ask(null);
  }

  protected override render() {
    const { choice } = this;
    if (choice === null) return nothing;
    return html`<label>${say('web.language')}
        <select class="blank" name="language" @change=${(event: Event) => void this.ask((event.target as HTMLSelectElement).value)}>
          ${choice.languages.map((one) => html`<option value=${one.code} lang=${one.code} ?selected=${one.code === choice.now}>${one.name}</option>`)}
        </select></label>
      ${this.trouble === null ? nothing : html`<p class="reason" role="alert">${this.trouble}</p>`}`;
  }

  private async ask(language: string | null): Promise<void> {
    try {
      const answer = await fetch('/api/languages', language === null ? {} : { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ language }) });
      const body = (await answer.json()) as Choice & { trouble?: string };
      if (!answer.ok) this.trouble = body.trouble ?? say('web.line.lost');
      else if (language === null) this.choice = body;
      else location.reload();
    } catch {
      this.trouble = say('web.line.lost');
    }
  }
}

customElements.define('language-choice', LanguageChoice);
