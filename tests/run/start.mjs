import { build, install, root, run } from './shared.mjs';

await install();
console.log('Building …');
const failure = await build();
if (failure !== '') {
  console.error(failure);
  process.exit(1);
}
const checked = await run('node', ['packages/cli/dist/tarebook.js', 'check', 'cases'], {
  show: true,
});
if (checked.code !== 0) console.error('Some cases do not hold; the page shows them as they are.');

const port = Number(process.env.PORT ?? 4173);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  console.error(`PORT is “${process.env.PORT}”; give a number from 1 to 65535.`);
  process.exit(2);
}
const { preview } = await import('vite');
try {
  await preview({
    root: `${root}/notebook`,
    logLevel: 'error',
    preview: { port, strictPort: true, host: 'localhost' },
  });
} catch (problem) {
  console.error(`Port ${port} cannot be used (${problem.message}); set PORT to another number.`);
  process.exit(1);
}
console.log(`The notebook is at http://localhost:${port}/`);
