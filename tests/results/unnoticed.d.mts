export declare const unnoticed: Readonly<Record<string, string>>;
