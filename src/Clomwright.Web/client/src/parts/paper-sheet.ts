import { LitElement } from 'lit';

/** One sheet as the server draws it, put into the page itself so that it is set in the page's own letters. */
export class PaperSheet extends LitElement {
  static override properties = { address: {} };

  declare address: string;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override updated(): void {
    void this.fetched(this.address);
  }

  private async fetched(address: string): Promise<void> {
    let drawn = false;
    try {
      const answer = await fetch(address);
      const text = await answer.text();
      if (address !== this.address) return;
      if (answer.ok) {
        const sheet = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
        this.replaceChildren(document.importNode(sheet, true));
        drawn = true;
      }
    } finally {
      if (address === this.address) this.dispatchEvent(new CustomEvent('sheet-there', { detail: drawn, bubbles: true }));
    }
  }
}

customElements.define('paper-sheet', PaperSheet);
