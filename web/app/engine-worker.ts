import { LocalEngine } from '../notebook/engine.ts';
import { serveEngine } from './engine-wire.ts';

serveEngine(self as unknown as Worker, new LocalEngine());
