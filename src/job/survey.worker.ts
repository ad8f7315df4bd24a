import { expose } from 'comlink';
import { type Job, surveyPlan } from '../core';

const planner = { whatIsLeft: (job: Job) => surveyPlan(job, { onTop: true }) };
export type SurveyWorker = typeof planner;

expose(planner);
