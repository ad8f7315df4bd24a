export type { Active, EntryStore, Pad } from './entry-store';
export { fieldsOf, isPlaced, type PlaceField, pathOf, valueIn } from './fields';
export { keyOfItem, type SurveyPlace, type Where } from './place';
export { SurveyProvider, useEntryState, useSurvey } from './SurveyContext';
export { nextStep, type Step, type Survey, surveyOf } from './survey-places';
export { type PlaceState, stateOf, type TagWords, tagWords } from './tag-words';
export { whereWords } from './where-words';
