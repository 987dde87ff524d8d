export { readCaseFrom } from '@tarebook/casebook';
