/** The pane: five ways, on top of each one sentence of what it does for the selection right now. */
import { FluentProvider } from "@fluentui/react-components";
import { type ReactElement, useCallback, useEffect, useRef, useState } from "react";
import type { FunctionSpec } from "../functions/contract.js";
import type { HostPort, Theme } from "../host/port.js";
import { useBook } from "./book.js";
import { CheckWay } from "./check/check-way.js";
import { FunctionsWay } from "./functions/functions-way.js";
import { LookWay } from "./look/look-way.js";
import { SourcesWay } from "./sources/sources-way.js";
import { StartWay } from "./start/start-way.js";
import { paneTheme, paneVariables } from "./theme.js";
import { WayTabs } from "./way-tabs.js";
import type { PaneTools } from "./tools.js";
import type { Way } from "./ways.js";

export interface PaneProps {
  readonly port: HostPort;
  readonly specs: readonly FunctionSpec[];
  readonly first: Way;
  /** Where there is no line of the host's own that reads the selected cell out. */
  readonly announces: boolean;
  readonly lookThrough: PaneTools["lookThrough"];
  /** Another way was asked for from outside (the ribbon). */
  readonly onAsked: (listener: (way: Way) => void) => () => void;
}

export function Pane({ port, specs, first, announces, lookThrough, onAsked }: PaneProps): ReactElement {
  const theme = useTheme(port);
  const [way, setWay] = useState(first);
  const { book, refresh } = useBook(port);
  const [said, setSaid] = useState("");
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => onAsked(setWay), [onAsked]);

  const say = useCallback((sentence: string): void => {
    setSaid(sentence);
  }, []);
  const choose = useCallback((chosen: Way): void => {
    setSaid("");
    setWay(chosen);
    body.current?.scrollTo(0, 0);
  }, []);
  const tools: PaneTools = { port, book, say, refresh, announces, lookThrough };

  return (
    <FluentProvider theme={paneTheme(theme)} className="gp-pane" data-theme={theme} style={paneVariables(theme)}>
      <WayTabs way={way} choose={choose} />
      <div className="gp-body" ref={body} role="tabpanel" tabIndex={0} id="gp-way" aria-labelledby={`gp-tab-${way}`}>
        <Content way={way} tools={tools} specs={specs} />
        <p className="gp-said" role="status">
          {said}
        </p>
      </div>
    </FluentProvider>
  );
}

function Content(props: { way: Way; tools: PaneTools; specs: readonly FunctionSpec[] }): ReactElement {
  const { way, tools, specs } = props;
  switch (way) {
    case "start":
      return <StartWay tools={tools} />;
    case "check":
      return <CheckWay tools={tools} />;
    case "look":
      return <LookWay tools={tools} />;
    case "functions":
      return <FunctionsWay tools={tools} specs={specs} />;
    case "sources":
      return <SourcesWay specs={specs} />;
  }
}

function useTheme(port: HostPort): Theme {
  const [theme, setTheme] = useState(() => port.theme());
  useEffect(() => port.onTheme(setTheme), [port]);
  return theme;
}
