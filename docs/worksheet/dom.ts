/**
 * Elements in one call.
 *
 * @module
 */

type Attributes = Readonly<Record<string, string | boolean | ((event: Event) => void)>>;

/** An element with attributes, listeners (`onclick`) and children; text is set as text, never read as markup. */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else if (value === true) element.setAttribute(name, "");
    else if (value !== false) element.setAttribute(name, value);
  }
  element.append(...children);
  return element;
}

/** The element of the page with an id. */
export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no #${id}`);
  return element;
}

/** Sets a text where it differs, so that a page that stays the same is left alone. */
export function say(element: HTMLElement, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** Makes the children of an element these, and leaves alone those that stand there already. */
export function place(parent: HTMLElement, children: readonly HTMLElement[]): void {
  const wanted = new Set<Element>(children);
  for (const child of [...parent.children]) if (!wanted.has(child)) child.remove();
  for (const [i, child] of children.entries()) {
    const there = parent.children[i];
    if (there !== child) parent.insertBefore(child, there ?? null);
  }
}
