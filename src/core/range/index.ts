export { evenlyAmong } from './evenlyAmong';
export { extent } from './extent';
export { spaced } from './spaced';
