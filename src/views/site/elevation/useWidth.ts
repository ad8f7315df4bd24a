import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element, px, as it changes. */
export function useWidth(): [ref: RefObject<HTMLDivElement | null>, width: number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    setWidth(element.clientWidth);
    const watch = new ResizeObserver(() => setWidth(element.clientWidth));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return [ref, width];
}
