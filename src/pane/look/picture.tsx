/** One axis with its title, its table behind, and the ways to take it along. */
import { Button } from "@fluentui/react-components";
import { type ReactElement, useEffect, useMemo, useRef } from "react";
import { Grade } from "../parts.js";
import type { Tones } from "../../host/tones.js";
import { useWidth } from "../wide.js";
import type { Band } from "./bands.js";
import { chart } from "./chart.js";
import { savePng, saveSvg } from "./export.js";
import { type Axis, type Point, valueInWords } from "./points.js";
import { alternativeOf, subtitleOf, titleOf } from "./words.js";

export interface PictureProps {
  readonly axis: Axis;
  readonly points: readonly Point[];
  readonly bands: readonly Band[];
  readonly criteria: string;
  readonly unit: string;
  readonly date: string | undefined;
  readonly tones: Tones;
  readonly say: (sentence: string) => void;
  readonly go: (point: Point) => void;
}

export function Picture(props: PictureProps): ReactElement {
  const { axis, points, bands, criteria, unit, date, tones, say, go } = props;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place);
  const title = titleOf(axis, points);
  const alternative = alternativeOf(points, unit);
  const svg = useMemo(
    () => (width === 0 ? undefined : chart({ axis, points, bands, unit, width, tones, title, alternative })),
    [axis, points, bands, unit, width, tones, title, alternative],
  );
  useEffect(() => {
    place.current?.replaceChildren(...(svg === undefined ? [] : [svg]));
  }, [svg]);
  const png = (): void => {
    if (svg === undefined) return;
    savePng(svg, `greybody-${axis}`, tones.paper).catch(() => {
      say("The picture could not be drawn as PNG; SVG works without drawing.");
    });
  };
  return (
    <figure className="gp-figure">
      <figcaption>
        <h2>{title}</h2>
        <p className="gp-note">{subtitleOf(criteria, unit, date, points.length)}</p>
      </figcaption>
      <div ref={place} className="gp-picture" />
      <ul className="gp-bands" aria-label="Bands of the criteria">
        {bands.map((band) => (
          <li key={band.grade}>
            <Grade grade={band.grade} words={`${String(band.grade)} of 4: ${band.words}`} />
          </li>
        ))}
      </ul>
      {bands.length === 0 ? <p className="gp-note">These criteria have no table here: no bands are drawn.</p> : null}
      <details>
        <summary>Table behind the picture</summary>
        <div className="gp-scroll" tabIndex={0} role="group" aria-label={`Table: ${title}`}>
          <table>
            <thead>
              <tr>
                <th scope="col">row</th>
                <th scope="col">item</th>
                <th scope="col">hottest</th>
                <th scope="col">{unit === "" ? "share" : `rise, ${unit}`}</th>
                <th scope="col">± U</th>
                <th scope="col">grade</th>
              </tr>
            </thead>
            <tbody>
              {points.map((point) => (
                <tr key={point.sheetRow}>
                  <td>
                    <button
                      type="button"
                      className="gp-link"
                      onClick={() => {
                        go(point);
                      }}
                    >
                      {point.sheetRow}
                    </button>
                  </td>
                  <td>{point.name}</td>
                  <td>{point.hottest}</td>
                  <td className="gp-number">{`${point.atLeast ? "≥ " : ""}${valueInWords(point)}`}</td>
                  <td className="gp-number">
                    {point.u === undefined ? "" : valueInWords({ ...point, value: point.u })}
                  </td>
                  <td>
                    <Grade grade={point.grade} words={point.words} />
                    {point.governs ? " governs" : ""}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
      <div className="gp-buttons">
        <Button
          size="small"
          onClick={() => {
            if (svg !== undefined) saveSvg(svg, `greybody-${axis}`);
          }}
        >
          Save as SVG
        </Button>
        <Button size="small" onClick={png}>
          Save as PNG
        </Button>
      </div>
    </figure>
  );
}
