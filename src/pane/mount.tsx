/** Puts the pane into a place of the page; loaded as a part of its own, so that the grid need not wait for it. */
import "./styles/pane.css";
import "./styles/forms.css";
import "./styles/results.css";
import { createRoot } from "react-dom/client";
import { catalogue } from "../functions/catalogue.js";
import type { HostPort } from "../host/port.js";
import { Pane } from "./pane.js";
import type { PaneTools } from "./tools.js";
import type { Way } from "./ways.js";

export interface MountOptions {
  readonly port: HostPort;
  readonly first?: Way;
  /** The pane reads the selected cell out itself: where the host has no such line. */
  readonly announces: boolean;
  readonly lookThrough?: PaneTools["lookThrough"];
}

export interface MountedPane {
  readonly show: (way: Way) => void;
}

export function mountPane(
  place: HTMLElement,
  { port, first = "start", announces, lookThrough }: MountOptions,
): MountedPane {
  const listeners = new Set<(way: Way) => void>();
  const onAsked = (listener: (way: Way) => void): (() => void) => {
    listeners.add(listener);
    return () => {
      listeners.delete(listener);
    };
  };
  createRoot(place).render(
    <Pane
      port={port}
      specs={catalogue}
      first={first}
      announces={announces}
      lookThrough={lookThrough}
      onAsked={onAsked}
    />,
  );
  return {
    show: (way) => {
      for (const listener of listeners) listener(way);
    },
  };
}
