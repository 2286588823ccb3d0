import { type RefObject, useEffect, useRef, useState } from "react";

/** Whether the pane around an element is at least so many pixels wide, also while it is drawn wider. */
export function useWide(from: number): { readonly wide: boolean; readonly ref: RefObject<HTMLDivElement | null> } {
  const ref = useRef<HTMLDivElement>(null);
  const width = useWidth(ref, ".gp-pane");
  return { wide: width >= from, ref };
}

/** The width of an element, or of what surrounds it; 0 until it is known. */
export function useWidth(ref: RefObject<HTMLElement | null>, around?: string): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const measured = around === undefined ? ref.current : ref.current?.closest(around);
    if (!measured) return;
    const observer = new ResizeObserver(([entry]) => {
      setWidth(Math.floor(entry?.contentRect.width ?? 0));
    });
    observer.observe(measured);
    return () => {
      observer.disconnect();
    };
  }, [ref, around]);
  return width;
}
