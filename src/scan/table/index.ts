export { readTable } from './read-table';
