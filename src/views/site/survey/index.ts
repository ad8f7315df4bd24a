export type { Active, EntryStore, Pad } from './entry-store';
export { fieldsOf, inReadingOrder, type PlaceField, pathOf, unreadIn, valueIn } from './fields';
export type { SurveyPlace, Where } from './place';
export { SurveyProvider, useEntryState, useSurvey } from './SurveyContext';
export type { Step, Survey } from './survey-places';
export { type PlaceState, stateOf, type TagWords, tagWords, unfinishedWords } from './tag-words';
export { whereWords } from './where-words';
