export { treeOf } from '@tarebook/casebook';
