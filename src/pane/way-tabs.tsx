import { Tab, TabList } from "@fluentui/react-components";
import type { ReactElement } from "react";
import { useWide } from "./wide.js";
import { type Way, WayIcon, wayNames, ways } from "./ways.js";

/** A list of words at the side of a wide pane, a strip of icons with words under them on top of a narrow one. */
export function WayTabs({ way, choose }: { way: Way; choose: (way: Way) => void }): ReactElement {
  const { wide, ref } = useWide(480);
  return (
    <div className="gp-ways" ref={ref} data-wide={wide}>
      <TabList
        vertical={wide}
        selectedValue={way}
        onTabSelect={(_, { value }) => {
          choose(value as Way);
        }}
        aria-label="Ways of the pane"
      >
        {ways.map((one) => (
          <Tab key={one} value={one} id={`gp-tab-${one}`} className="gp-way" aria-controls="gp-way">
            {wide ? null : <WayIcon way={one} />}
            <span>{wayNames[one]}</span>
          </Tab>
        ))}
      </TabList>
    </div>
  );
}
