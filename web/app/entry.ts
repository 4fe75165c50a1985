import { layKeptGround } from '../elements/shortcuts/page-choices.ts';
import { firstFrame } from './first-frame.ts';

layKeptGround(document.documentElement);
// What stands in the page is shown first; the application begins when it is.
void firstFrame(globalThis).then(() => import('./main.ts'));
