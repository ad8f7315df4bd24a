/** A number of things: `1 sheet`, `2 sheets`. */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
