/** Links that carry a job, and their codes; loaded when first asked for. */
export const loadSharing = () => import('./share');
