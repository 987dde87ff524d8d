import { build, giveUp, install } from './shared.mjs';

await install();
const failure = await build();
if (failure !== '') giveUp(failure);
console.log('Built.');
