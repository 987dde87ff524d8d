import { writeResults } from './results.mjs';
import { build, giveUp, install } from './shared.mjs';

await install();
const failure = await build();
if (failure !== '') giveUp(failure);
await writeResults();
console.log('Built.');
