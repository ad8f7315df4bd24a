/** 95 % of a normal distribution lies within this many standard deviations. */
export const Z_95 = 1.959964;
