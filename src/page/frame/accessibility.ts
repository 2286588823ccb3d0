/** What Univer's own elements lack for assistive technology, mended from outside by attributes as they appear. */
export function mendAccessibility(root: HTMLElement): void {
  const mend = (): void => {
    for (const link of root.querySelectorAll("a[aria-expanded]:not([role])")) {
      link.setAttribute("role", "button");
      link.setAttribute("aria-label", "Names in this workbook");
    }
    for (const input of root.querySelectorAll("input:not([aria-label], [id])")) {
      input.setAttribute("aria-label", input.closest("[data-u-comp=defined-name]") ? "Go to cell or name" : "Value");
    }
    for (const button of root.querySelectorAll("button:not([aria-label])")) {
      if (button.textContent.trim() === "") button.setAttribute("aria-label", "Larger or smaller formula bar");
    }
    // The keys go to Univer's hidden editor, not to its canvases: they need no place of their own, and not the first.
    for (const canvas of root.querySelectorAll("canvas[tabindex='1']")) canvas.setAttribute("tabindex", "-1");
    root.querySelectorAll("section[aria-label^=Notifications]").forEach((section, index) => {
      const label = index === 0 ? "Notifications" : `Notifications ${index + 1}`;
      if (section.getAttribute("aria-label") !== label) section.setAttribute("aria-label", label);
    });
  };
  mend();
  new MutationObserver(mend).observe(root, { childList: true, subtree: true });
}
