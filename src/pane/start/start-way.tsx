/** Start: new sheets, in the units and by the criteria that were agreed; the cautions at its foot. */
import type { ReactElement } from "react";
import { Cautions } from "../cautions.js";
import { Sentence } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { routeTemplateOf } from "./next-route.js";
import { NextRouteForm } from "./next-route-form.js";
import { PicturesForm } from "./pictures-form.js";
import { NewSheetsForm } from "./new-sheets.js";
import { startSentence } from "./sentence.js";

export function StartWay({ tools }: { tools: PaneTools }): ReactElement {
  const template = routeTemplateOf(tools.book.route);
  return (
    <>
      <Sentence announces={tools.announces}>{startSentence(tools.book)}</Sentence>
      <NewSheetsForm tools={tools} />
      {template === undefined ? null : <NextRouteForm tools={tools} template={template} />}
      {template === undefined ? null : <PicturesForm tools={tools} />}
      <Cautions />
    </>
  );
}
