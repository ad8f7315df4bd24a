export { ContourForm } from './ContourForm';
