import type { JudgedFigure, Judgement, Verdict } from '../../core';

export const verdictWords: Record<Verdict, string> = {
  fits: 'Fits as is',
  scribe: 'Scribe',
  prepare: 'Prepare first',
  hold: 'Do not panel yet',
};

export const judgementWords: Record<Judgement, string> = {
  within: 'within',
  beyond: 'beyond',
  'cannot-tell': 'too close to tell',
  'not-measured': 'not measured',
  'no-limit': 'no limit given',
};

export const figureWords: Record<JudgedFigure['figure'], string> = {
  plumb: 'plumb',
  'bow-up': 'bow, up and down',
  'bow-across': 'bow, side to side',
  twist: 'twist',
  square: 'square',
  'level-along': 'level, left to right',
  'level-across': 'level, back to front',
};

/** How a figure is judged, for people. */
export const ruleWords =
  'Within: the figure and its ± together stay inside the limit. Beyond: the figure less its ± lies outside. Otherwise it is too close to tell (guard band of one ±, after JCGM 106:2012).';
