/** A module of its own in what is published, so that a program that only walks rules leaves it out. */
export { Engine, type NestedCondition, type TopLevelCondition } from 'json-rules-engine';
