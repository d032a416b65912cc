import './today.css';
import { render } from 'lit';
import { takeWords } from '../words';
import { admission, stranger } from './admission';
import { Day } from './day';
import type { Given } from './scene';

const given = JSON.parse(document.querySelector('#given')!.textContent!) as Given;
const root = document.querySelector<HTMLElement>('#today')!;
takeWords(given.words);
if (given.mode === 'in') admission(root);
else if (given.mode === 'stranger') render(stranger(), root);
else new Day(given, root).start();
