/**
 * What Univer's own elements lack for assistive technology, mended from outside: links that open something are
 * buttons, and inputs have a name.
 */
export function mendAccessibility(root: HTMLElement): void {
  const mend = (): void => {
    for (const link of root.querySelectorAll("a[aria-expanded]:not([role])")) {
      link.setAttribute("role", "button");
      link.setAttribute("aria-label", "Names in this workbook");
    }
    for (const input of root.querySelectorAll("input:not([aria-label])")) {
      input.setAttribute("aria-label", input.closest("[data-u-comp=defined-name]") ? "Go to cell or name" : "Value");
    }
  };
  mend();
  new MutationObserver(mend).observe(root, { childList: true, subtree: true });
}
