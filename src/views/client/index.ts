export { Client } from './Client';
export { Shared } from './Shared';
