import { build, install } from './shared.mjs';

await install();
const failure = await build();
if (failure !== '') {
  console.error(failure);
  process.exit(1);
}
console.log('Built.');
