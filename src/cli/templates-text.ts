import { templates } from "../templates/registry.js";

/** Before a template's name: its filled demo. */
export const DEMO = "demo-";

const demos = templates.filter(({ demo }) => demo !== undefined);
export const templateNames: readonly string[] = [
  ...templates.map(({ name }) => name),
  ...demos.map(({ name }) => DEMO + name),
];

/** What can be made, a line each. */
export function templatesText(): string {
  const width = Math.max(...templateNames.map(({ length }) => length));
  const line = (name: string, about: string): string => `  ${name.padEnd(width)}  ${about}`;
  return [
    "Templates:",
    ...templates.map(({ name, about }) => line(name, about)),
    ...demos.map(({ name, title }) => line(DEMO + name, `${title}, filled with an invented example.`)),
  ].join("\n");
}
