import { type ComponentType, lazy, type ReactNode } from 'react';
import { PartBoundary } from './PartBoundary';
import { whenTouched } from './useTouched';

/**
 * A component whose code is loaded when it is first shown. Where that fails, without a connection or after an update,
 * a sentence takes its place and it can be tried again.
 */
export function loaded<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props & { instead?: ReactNode }> {
  const attempt = () => lazy<ComponentType<Props>>(async () => ({ default: await load() }));
  let Part = attempt();
  const again = () => {
    Part = attempt();
  };
  // biome-ignore lint/correctness/noComponentHookFactories: called once for each part, when its module is read
  return function Loaded(props) {
    return (
      <PartBoundary again={again} instead={props.instead}>
        <Shown part={() => Part} props={props} />
      </PartBoundary>
    );
  };
}

/** As `loaded`, but from the first sign that somebody is there, so that it is still there when the signal is gone. */
export function loadedSoon<Props extends object>(load: () => Promise<ComponentType<Props>>) {
  whenTouched()
    .then(load)
    .catch(() => undefined);
  return loaded(load);
}

/** Asks for the part anew at each try. */
function Shown<Props extends object>({ part, props }: { part: () => ComponentType<Props>; props: Props }) {
  const Part = part();
  return <Part {...props} />;
}
