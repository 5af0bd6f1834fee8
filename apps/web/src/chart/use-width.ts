import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** Width in CSS pixels of the element the ref is put on; 0 before it is known. */
export function useWidth<E extends Element>(): [RefObject<E | null>, number] {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    setWidth(element.clientWidth);
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}
