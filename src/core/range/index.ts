export { extent } from './extent';
export { spaced } from './spaced';
