import { programRoot } from './program-root.ts';
import { buildElectron, buildPage } from './start/build.ts';

// `npm run build`: everything that the packaged program is made of, from nothing.
const root = programRoot();
await buildPage(root);
await buildElectron(root);
