import { LocalEngine } from '../notebook/local-engine.ts';
import { serveEngine } from './engine-wire.ts';

serveEngine(self as unknown as Worker, new LocalEngine());
