import './styles/board.css';
import { loadWords } from './words';
import { Workbench } from './workbench';

await loadWords();
customElements.define('clom-workbench', Workbench);
