import { html, nothing, render, type TemplateResult } from 'lit';
import { say } from '../words';

/** Before a phone is let in: whose it is. The code stands behind the # of the address and is sent once, with the name. */
export function admission(root: HTMLElement): void {
  const code = location.hash.slice(1);
  history.replaceState(null, '', location.pathname);
  let wrong: string | null = null;
  let sending = false;

  const send = async (event: Event): Promise<void> => {
    event.preventDefault();
    const name = new FormData(event.target as HTMLFormElement).get('name');
    sending = true;
    show();
    try {
      const answer = await fetch('/in', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ code, name }) });
      const body = (await answer.json()) as { place?: string; trouble?: string };
      if (answer.ok && body.place !== undefined) {
        location.replace(body.place);
        return;
      }
      wrong = body.trouble ?? say('web.today.lost');
    } catch {
      wrong = say('web.today.lost');
    }
    sending = false;
    show();
  };

  const show = (): void => {
    render(
      html`<main class="gate">
        <h1>${say('web.today.in-ask')}</h1>
        ${code === ''
          ? html`<p>${say('web.today.in-no-code')}</p>`
          : html`<form @submit=${send}>
              <label>${say('web.today.in-name')}<input name="name" autocomplete="name" maxlength="40" required aria-describedby=${wrong === null ? nothing : 'wrong'} /></label>
              ${wrong === null ? nothing : html`<p class="wrong" id="wrong" role="alert">${wrong}</p>`}
              <button type="submit" class="strong" ?disabled=${sending}>${say('web.today.in-go')}</button>
            </form>`}
        <p class="soft">${say('web.today.in-open')}</p>
      </main>`,
      root,
    );
  };
  show();
}

/** For a phone that is not let in. */
export function stranger(): TemplateResult {
  return html`<main class="gate"><h1>${say('web.today.in-title')}</h1><p>${say('web.today.stranger')}</p></main>`;
}
