import { attribute, isTrue, localName, readXml } from "../xml/read.js";

/**
 * The cell metadata indexes (the attribute cm, from 1) that mark a formula as a dynamic array.
 * Source: ECMA-376 part 1, 18.9 (metadata); the extension "dynamicArrayProperties" with fDynamic, as workbooks hold it.
 */
export function dynamicArrayIndexes(part: string, text: string): ReadonlySet<number> {
  const types: string[] = [];
  const dynamic: boolean[] = [];
  const found = new Set<number>();
  let future = "";
  let inBlock = false;
  let inCells = false;
  let block = 0;
  readXml(part, text, {
    open: (tag) => {
      switch (localName(tag.name)) {
        case "metadataType":
          types.push(attribute(tag, "name") ?? "");
          break;
        case "futureMetadata":
          future = attribute(tag, "name") ?? "";
          break;
        case "cellMetadata":
          inCells = true;
          break;
        case "bk":
          inBlock = true;
          if (inCells) block++;
          else if (future === "XLDAPR") dynamic.push(false);
          break;
        case "dynamicArrayProperties":
          if (inBlock && isTrue(attribute(tag, "fDynamic"))) dynamic[dynamic.length - 1] = true;
          break;
        case "rc":
          if (inCells && types[Number(attribute(tag, "t")) - 1] === "XLDAPR") {
            if (dynamic[Number(attribute(tag, "v"))] === true) found.add(block);
          }
          break;
        default:
      }
    },
    close: (name) => {
      const local = localName(name);
      if (local === "bk") inBlock = false;
      else if (local === "futureMetadata") future = "";
      else if (local === "cellMetadata") inCells = false;
    },
  });
  return found;
}
