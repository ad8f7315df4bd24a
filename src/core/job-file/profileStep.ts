/** Points of the rim's contour closer together than this outwards are one step in the rim, mm. */
export const LEAST_PROFILE_STEP = 0.1;
