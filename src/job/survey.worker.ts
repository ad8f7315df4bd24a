import { expose } from 'comlink';
import { surveyPlan } from '../core';

const planner = { surveyPlan };
export type SurveyWorker = typeof planner;

expose(planner);
