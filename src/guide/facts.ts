import {
  DELTA_0,
  DRY_FIT_TOLERANCE,
  formatLength,
  GROSSLY_LEANING,
  GROSSLY_UNEVEN,
  JOINT_TAKES_UP,
  jobSchema,
  MM_PER_INCH,
  normalCritical,
  PLANE_UP_TO,
  SINGLE_SIGNIFICANCE,
  Z_95,
} from '../core';

/** A job in which nothing is chosen. */
export const plainJob = () => {
  const sheet = { width: 60 * MM_PER_INCH, height: 96 * MM_PER_INCH };
  return jobSchema.parse({
    format: 'nookwright-job',
    version: 1,
    readings: [],
    sheets: { back: sheet, left: sheet, right: sheet },
  });
};

/** Numbers that the guide quotes, each from the code that works with it, as text. */
export function facts(): Readonly<Record<string, string>> {
  const { fit, bedding } = plainJob();
  return {
    z95: Z_95.toFixed(2),
    delta0: DELTA_0.toFixed(2),
    critical: normalCritical(SINGLE_SIGNIFICANCE).toFixed(2),
    significance: `${100 * SINGLE_SIGNIFICANCE} %`,
    'dry-fit': both(DRY_FIT_TOLERANCE),
    'joint-takes-up': both(JOINT_TAKES_UP),
    uneven: both(GROSSLY_UNEVEN),
    leaning: both(GROSSLY_LEANING),
    'plane-up-to': both(PLANE_UP_TO),
    'mark-tolerance': both(fit.markTolerance),
    'corner-joint': both(fit.cornerJoint),
    'rim-joint': both(fit.rimJoint),
    bed: both(fit.bed),
    reach: both(bedding.reach),
    'strain-limit': `${100 * bedding.strainLimit} %`,
    pressing: `${bedding.pressing} N/m²`,
  };
}

/** Both units, with no mark that markup would need to escape: `1/8 in (3.2 mm)`. */
function both(length: number): string {
  const mm = `${Number(length.toFixed(1))} mm`;
  return length < MM_PER_INCH / 64
    ? mm
    : `${formatLength(length, { unit: 'in', denominator: 32 }).replace('"', ' in')} (${mm})`;
}
