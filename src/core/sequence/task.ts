/** A step of the work. `gate`: a check that must pass; `wait`: time that nobody spends. */
export type TaskKind = 'work' | 'gate' | 'wait';

export interface Task {
  id: string;
  label: string;
  kind: TaskKind;
  /** minutes */
  duration: number;
  /** ids of the tasks that must be finished first */
  after: string[];
  /** people who must be there */
  people: 0 | 1 | 2;
  cautions: string[];
  /** stretches of joint that are closed in this step, mm from the start of each */
  joints: { id: string; from: number; to: number }[];
}
