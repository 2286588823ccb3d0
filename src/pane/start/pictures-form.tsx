/** Pictures of the exceptions: a folder is chosen, what fits is placed, the rest is told. */
import { Button } from "@fluentui/react-components";
import { type ReactElement, useEffect, useId, useRef, useState } from "react";
import { Note } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { type PlacedOutcome, picturesFrom } from "./pictures.js";

/** Asks for a folder and not for files; React has no name for it. */
const FOLDER = { webkitdirectory: "" };

export function PicturesForm({ tools }: { tools: PaneTools }): ReactElement {
  const { port, say } = tools;
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [refusal, setRefusal] = useState<string>();
  const [placing, setPlacing] = useState(false);
  const [outcome, setOutcome] = useState<PlacedOutcome>();
  useEffect(() => {
    let here = true;
    void port.pictureBoxes().then((boxes) => {
      if (here) setRefusal(boxes.ok || boxes.reason !== "unable" ? undefined : boxes.message);
    });
    return () => {
      here = false;
    };
  }, [port]);

  const place = async (files: FileList | null): Promise<void> => {
    if (files === null || files.length === 0 || placing) return;
    setPlacing(true);
    say("Placing pictures…");
    const placed = await picturesFrom(port, [...files]);
    setPlacing(false);
    setOutcome(placed.ok ? placed.value : undefined);
    say(placed.ok ? `Pictures: ${placed.value.summary}` : placed.message);
    // So that the same folder can be chosen again.
    if (input.current !== null) input.current.value = "";
  };

  return (
    <section className="gp-form" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>Pictures</h2>
      {refusal === undefined ? (
        <>
          <input
            ref={input}
            type="file"
            multiple
            hidden
            aria-label="Folder with pictures"
            {...FOLDER}
            onChange={(event) => void place(event.target.files)}
          />
          <div className="gp-buttons">
            <Button disabledFocusable={placing} onClick={() => input.current?.click()}>
              Choose the folder
            </Button>
          </div>
          <Note>
            JPEG and PNG files are placed by the image numbers of the exceptions; only their pixels are taken. What does
            not fit without doubt is listed here and not placed.
          </Note>
          {outcome === undefined || outcome.lines.length === 0 ? null : (
            <ul className="gp-list" aria-label="Pictures to look at">
              {outcome.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </>
      ) : (
        <Note>{refusal}</Note>
      )}
    </section>
  );
}
