import { html, type TemplateResult } from 'lit';
import { hrefOf } from '../places';
import { say } from '../words';
import './language-choice';

/** What somebody who has never been here can do with the house that lies open; put away for good by one press. */
export function greeting(house: string, name: string): TemplateResult {
  return html`<aside class="greeting" aria-labelledby="greeting">
    <h2 id="greeting">${say('web.greet.heading', { name })}</h2>
    <ol>
      <li>${say('web.greet.drag')}</li>
      <li>${say('web.greet.margin')}</li>
      <li>${say('web.greet.sheets')}</li>
    </ol>
    <p class="act-line">
      <a class="act" href="/#begin">${say('web.greet.begin')}</a>
      <a class="act" href=${hrefOf({ page: 'wall', house })}>${say('web.greet.put-away')}</a>
      <language-choice></language-choice>
    </p>
  </aside>`;
}
