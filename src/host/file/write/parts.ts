/** The parts that every package has: what points to what, content types, properties, metadata. */
import { counted, element, MAIN, RELATIONSHIPS, xstring, XML_HEAD } from "./element.js";

export interface Link {
  readonly id: string;
  /** The last step of its type, such as "worksheet", or the whole type. */
  readonly kind: string;
  readonly target: string;
}

/** What a part points to (ISO/IEC 29500-2, 9.3). */
export function relationshipsXml(links: readonly Link[]): string {
  const items = links.map(({ id, kind, target }) =>
    element("Relationship", { Id: id, Type: kind.includes("/") ? kind : `${RELATIONSHIPS}/${kind}`, Target: target }),
  );
  const xmlns = "http://schemas.openxmlformats.org/package/2006/relationships";
  return XML_HEAD + element("Relationships", { xmlns }, ...items);
}

/** Which content each part has: by its extension, else by its name. */
export function contentTypesXml(
  defaults: ReadonlyMap<string, string>,
  parts: readonly { readonly name: string; readonly type: string }[],
): string {
  const xmlns = "http://schemas.openxmlformats.org/package/2006/content-types";
  return (
    XML_HEAD +
    element(
      "Types",
      { xmlns },
      ...[...defaults].map(([Extension, ContentType]) => element("Default", { Extension, ContentType })),
      ...parts.map(({ name, type }) => element("Override", { PartName: `/${name}`, ContentType: type })),
    )
  );
}

export function corePropertiesXml(title: string): string {
  const namespaces = {
    "xmlns:cp": "http://schemas.openxmlformats.org/package/2006/metadata/core-properties",
    "xmlns:dc": "http://purl.org/dc/elements/1.1/",
  };
  // No author and no date: who made it when is in the sheets, if anywhere.
  return XML_HEAD + element("cp:coreProperties", namespaces, element("dc:title", {}, xstring(title)));
}

export function appPropertiesXml(): string {
  const xmlns = "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties";
  return XML_HEAD + element("Properties", { xmlns }, element("Application", {}, "Greybody"));
}

/** Marks the formulas with cm="1" as dynamic arrays: their results spill as far as they need. */
export function metadataXml(): string {
  const yes = (names: string): Record<string, boolean> =>
    Object.fromEntries(names.split(" ").map((name) => [name, true]));
  const kept = yes(
    "copy pasteAll pasteValues merge splitFirst rowColShift clearFormats clearComments assign coerce cellMeta",
  );
  const properties = element(
    "extLst",
    {},
    element(
      "ext",
      { uri: "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}" },
      element("xda:dynamicArrayProperties", { fDynamic: true, fCollapsed: false }),
    ),
  );
  return (
    XML_HEAD +
    element(
      "metadata",
      { xmlns: MAIN, "xmlns:xda": "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray" },
      counted("metadataTypes", [element("metadataType", { name: "XLDAPR", minSupportedVersion: 120000, ...kept })]),
      element("futureMetadata", { name: "XLDAPR", count: 1 }, element("bk", {}, properties)),
      counted("cellMetadata", [element("bk", {}, element("rc", { t: 1, v: 0 }))]),
    )
  );
}
