/** Small helpers over the document. */

/** Any child: text or an element. */
export type Child = Node | string;

export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>> = {},
  children: readonly Child[] = [],
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

export function button(
  label: string,
  press: () => void,
  attributes: Readonly<Record<string, string>> = {},
): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, [label]);
  made.addEventListener("click", press);
  return made;
}
