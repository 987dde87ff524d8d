import type { Topic } from '@tarebook/rules';

export declare const firewood: Topic;
