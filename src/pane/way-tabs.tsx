import { type KeyboardEvent, type ReactElement, useRef } from "react";
import { useWide } from "./wide.js";
import { type Way, WayIcon, wayNames, ways } from "./ways.js";

/**
 * A list of words at the side of a wide pane, a strip of icons with words under them on top of a narrow one.
 * Not Fluent's: its tabs set stops of their own for the Tab key at both ends of the page, which the grid trips over.
 */
export function WayTabs({ way, choose }: { way: Way; choose: (way: Way) => void }): ReactElement {
  const { wide, ref } = useWide(480);
  const list = useRef<HTMLDivElement>(null);
  const move = (event: KeyboardEvent): void => {
    const tabs = [...(list.current?.querySelectorAll<HTMLElement>("[role=tab]") ?? [])];
    const at = tabs.indexOf(document.activeElement as HTMLElement);
    const [next, back] = wide ? ["ArrowDown", "ArrowUp"] : ["ArrowRight", "ArrowLeft"];
    const to = { [next]: at + 1, [back]: at - 1, Home: 0, End: tabs.length - 1 }[event.key];
    if (at < 0 || to === undefined) return;
    event.preventDefault();
    tabs[(to + tabs.length) % tabs.length]?.focus();
  };
  return (
    <div className="gp-ways" ref={ref} data-wide={wide}>
      <div
        ref={list}
        role="tablist"
        aria-label="Ways of the pane"
        aria-orientation={wide ? "vertical" : "horizontal"}
        onKeyDown={move}
      >
        {ways.map((one) => (
          <button
            key={one}
            type="button"
            role="tab"
            id={`gp-tab-${one}`}
            className="gp-way"
            aria-selected={one === way}
            aria-controls={one === way ? "gp-way" : undefined}
            tabIndex={one === way ? 0 : -1}
            onClick={() => {
              choose(one);
            }}
          >
            {wide ? null : <WayIcon way={one} />}
            <span>{wayNames[one]}</span>
          </button>
        ))}
      </div>
    </div>
  );
}
