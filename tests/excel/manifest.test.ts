import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { validateXML } from "xmllint-wasm";
import { NAMESPACE } from "../../src/functions/describe.js";
import { elementsOf, partOf } from "../support/manifest.js";
import { decodePng } from "../support/png.js";
import { root } from "../support/run.js";

const base = "https://localhost:3000";
const folder = path.join(root, "dist/excel");
const source = readFileSync(path.join(root, "manifest.xml"), "utf8");
const built = readFileSync(path.join(folder, "manifest.xml"), "utf8");
const { version } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as { version: string };
const elements = elementsOf(built);

const all = (name: string): typeof elements => elements.filter((element) => element.name === name);
const values = (name: string): string[] => all(name).map(({ attributes }) => attributes.DefaultValue ?? "");
/** Everything that a resid may name, by its id. */
const resources = new Map(
  ["Image", "Url", "String"].flatMap((name) =>
    all(name).flatMap(({ attributes }) =>
      attributes.id === undefined ? [] : [[attributes.id, attributes.DefaultValue ?? ""] as const],
    ),
  ),
);

const shared = path.join(process.env.GREYBODY_SHARED ?? "", "manifest-xsd");
const schemaTest = existsSync(shared) ? test : test.skip;

schemaTest.each([
  ["as it stands", source],
  ["as built", built],
])("the manifest %s fits Microsoft's schema (skipped without GREYBODY_SHARED/manifest-xsd)", async (_, contents) => {
  const files = readdirSync(shared)
    .filter((name) => name.endsWith(".xsd"))
    .map((fileName) => ({ fileName, contents: readFileSync(path.join(shared, fileName), "utf8") }));
  const isMain = ({ fileName }: { fileName: string }): boolean => fileName === "OfficeAppManifestV1_1.xsd";
  const { valid, errors } = await validateXML({
    xml: [{ fileName: "manifest.xml", contents }],
    schema: files.filter(isMain),
    preload: files.filter((file) => !isMain(file)),
  });
  expect([valid, errors]).toEqual([true, []]);
});

test("the built one is the source with its comment gone, the version of package.json, and the address that is built for", () => {
  const expected = source
    .replace(/<!--[^]*?-->\n/, "")
    .replace(/<Version>.*<\/Version>/, `<Version>${version}.0</Version>`);
  expect(built).toBe(expected);
});

test("every resid names a resource, and every resource is named", () => {
  const named = elements.flatMap(({ attributes }) => attributes.resid ?? []);
  expect(named.filter((id) => !resources.has(id))).toEqual([]);
  expect([...resources.keys()].filter((id) => !named.includes(id))).toEqual([]);
  expect(new Set(resources.keys()).size).toBe(
    all("Image").filter(({ attributes }) => attributes.id).length + all("Url").length + all("String").length,
  );
});

test("one page for the shared runtime: the five places agree, and no TaskpaneId makes a second", () => {
  const resid = (part: string): string => /resid="([^"]*)"/.exec(part)?.[1] ?? "";
  const page = resid(partOf(built, "Runtimes"));
  const places = {
    FunctionFile: all("FunctionFile")[0]?.attributes.resid,
    Page: resid(partOf(built, "Page")),
    ShowTaskpane: resid(/<Action xsi:type="ShowTaskpane">[^]*?<\/Action>/.exec(built)?.[0] ?? ""),
    SourceLocation: elements.find(({ name, attributes }) => name === "SourceLocation" && attributes.DefaultValue)
      ?.attributes.DefaultValue,
  };
  expect(places).toEqual({ FunctionFile: page, Page: page, ShowTaskpane: page, SourceLocation: resources.get(page) });
  expect(all("Runtime").map(({ attributes }) => attributes)).toEqual([{ resid: page, lifetime: "long" }]);
  expect(all("TaskpaneId")).toEqual([]);
});

test("asked for are the shared runtime and the error class, once, in the base block", () => {
  expect(all("Set").map(({ attributes }) => attributes)).toEqual([
    { Name: "SharedRuntime", MinVersion: "1.1" },
    { Name: "CustomFunctionsRuntime", MinVersion: "1.2" },
  ]);
  expect(partOf(built, "VersionOverrides")).not.toContain("<Requirements");
});

test("every address is https, and stands in the built folder", () => {
  const addresses = ["IconUrl", "HighResolutionIconUrl", "SupportUrl", "SourceLocation", "Image", "Url"]
    .flatMap(values)
    .filter(Boolean);
  expect(addresses.length).toBeGreaterThan(12);
  const help = readFileSync(path.join(folder, "help.html"), "utf8");
  for (const address of addresses) {
    expect(address.startsWith(`${base}/`)).toBe(true);
    const [file = "", anchor] = address.slice(base.length + 1).split("#");
    expect([file, existsSync(path.join(folder, file))]).toEqual([file, true]);
    if (anchor !== undefined) expect(help).toContain(` id="${anchor}"`);
  }
  expect(built).not.toMatch(/="http:\/\/(?!schemas\.microsoft\.com|www\.w3\.org)/);
  expect(values("SupportUrl")).toHaveLength(1);
});

test("strings keep within Excel's limits", () => {
  const longest = (strings: readonly string[]): number => Math.max(...strings.map((text) => text.length));
  const strings = (block: string): string[] =>
    elementsOf(partOf(built, block)).flatMap(({ attributes }) => attributes.DefaultValue ?? []);
  expect(longest(strings("bt:ShortStrings"))).toBeLessThanOrEqual(125);
  expect(longest(strings("bt:LongStrings"))).toBeLessThanOrEqual(250);
  expect(longest([...resources.keys()])).toBeLessThanOrEqual(32);
  expect(longest([...values("DisplayName"), ...all("ProviderName").map(({ text }) => text)])).toBeLessThanOrEqual(125);
  expect(longest(values("Description"))).toBeLessThanOrEqual(250);
  expect(longest(elements.flatMap(({ attributes }) => attributes.id ?? []))).toBeLessThanOrEqual(125);
});

test("the namespace is the catalogue's, three letters or more and no cell", () => {
  const id = all("Namespace")[0]?.attributes.resid ?? "";
  expect(resources.get(id)).toBe(NAMESPACE);
  expect(NAMESPACE).toMatch(/^[A-Z]{3,}$/);
});

test("every command of the ribbon does something: it opens the pane or names what the page's script ties to it", () => {
  const script = readFileSync(path.join(folder, "pane.js"), "utf8");
  const labels = all("Control").map(({ attributes }) => attributes.id);
  expect(labels).toEqual(["Greybody.OpenPane", "Greybody.NewRoute", "Greybody.CheckSheet"]);
  const actions = all("Action").map(({ attributes }) => attributes["xsi:type"]);
  expect(actions).toEqual(["ShowTaskpane", "ExecuteFunction", "ExecuteFunction"]);
  const names = all("FunctionName").map(({ text }) => text);
  expect(names).toEqual(["newRoute", "checkSheet"]);
  for (const name of names) expect(script).toContain(`"${name}"`);
});

test("every command has a label and a tip of its own, and icons in the four sizes", () => {
  const controls = built.match(/<Control [^]*?<\/Control>/g) ?? [];
  const parts = controls.map((control) => {
    const inside = elementsOf(control);
    const resid = (name: string): string[] =>
      inside.filter((one) => one.name === name).flatMap(({ attributes }) => attributes.resid ?? []);
    return { label: resid("Label")[0], tip: resid("Description")[0], icons: resid("Image") };
  });
  const texts = parts.flatMap(({ label, tip }) => [resources.get(label ?? ""), resources.get(tip ?? "")]);
  expect(new Set(texts).size).toBe(2 * controls.length);
  expect(texts).not.toContain(undefined);
  const icons = parts.map((part) => part.icons.map((icon) => resources.get(icon)));
  expect(icons.map((four) => four.length)).toEqual([4, 4, 4]);
  expect(new Set(icons.flat()).size).toBe(12);
});

describe("icons", () => {
  const size = (address: string): [number, number] => {
    const { width, height } = decodePng(readFileSync(path.join(folder, address.slice(base.length + 1))));
    return [width, height];
  };

  test("have the sizes that the manifest says", () => {
    for (const { attributes } of all("Image").filter(({ attributes: { size: one } }) => one !== undefined)) {
      const wanted = Number(attributes.size);
      expect(size(resources.get(attributes.resid ?? "") ?? "")).toEqual([wanted, wanted]);
    }
    expect(size(values("IconUrl")[0]!)).toEqual([32, 32]);
    expect(size(values("HighResolutionIconUrl")[0]!)).toEqual([64, 64]);
    const sizes = new Set(all("Image").flatMap(({ attributes }) => attributes.size ?? []));
    expect([...sizes]).toEqual(expect.arrayContaining(["16", "32", "80"]));
  });

  test.each([16, 32, 64, 80, 128])("%i px: a grey body with a band from sand to plum, clear around", (side) => {
    const { width, height, at } = decodePng(readFileSync(path.join(folder, `icons/greybody-${side}.png`)));
    expect([width, height]).toEqual([side, side]);
    const point = (x: number, y: number): number[] => at(Math.floor(x * side), Math.floor(y * side));
    const light = (x: number, y: number): number =>
      point(x, y)
        .slice(0, 3)
        .reduce((sum, value) => sum + value, 0);
    expect([point(0, 0)[3], point(0.99, 0.99)[3], point(0.5, 0.5)[3]]).toEqual([0, 0, 255]);
    // Each step darker than the last, so that it reads without colour.
    const band = [0.15, 0.4, 0.62, 0.86].map((x) => light(x, 0.5 - 0.22 * (x - 0.5)));
    expect(band).toEqual([...band].sort((a, b) => b - a));
    expect(new Set(band).size).toBe(4);
    const [red, green, blue] = point(0.5, 0.2) as [number, number, number];
    expect(Math.max(red, green, blue) - Math.min(red, green, blue)).toBeLessThan(30);
  });
});
