/** A few lines below the bar, with what can be done about them: read out, never in the way of the grid as a dialog is. */
import { button, element } from "../frame/dom.js";

export interface Notice {
  readonly root: HTMLElement;
  readonly show: (said: Said) => void;
  readonly hide: () => void;
}

export interface Said {
  readonly title: string;
  readonly lines?: readonly string[];
  /** The first is the next sensible one. Each closes the notice. */
  readonly actions: readonly (readonly [label: string, act: () => void])[];
}

export function notice(): Notice {
  const root = element("section", { class: "gb-notice", "aria-label": "About the file", hidden: "" });
  const hide = (): void => {
    root.hidden = true;
    root.replaceChildren();
  };
  return {
    root,
    hide,
    show: ({ title, lines = [], actions }) => {
      const buttons = actions.map(([label, act], at) =>
        button(
          label,
          () => {
            hide();
            act();
          },
          at === 0 ? { class: "gb-next" } : {},
        ),
      );
      const list = element(
        "ul",
        {},
        lines.map((line) => element("li", {}, [line])),
      );
      const words = element("div", { role: "alert" }, [element("p", {}, [title]), ...(lines.length > 0 ? [list] : [])]);
      root.hidden = false;
      root.replaceChildren(words, element("div", { class: "gb-notice-actions" }, buttons));
    },
  };
}
