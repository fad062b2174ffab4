const escapes = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
]);

// Characters that XML 1.0 (fifth edition, 2.2) does not allow, lone surrogates among them.
const forbidden = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

/**
 * Text that can stand in XML, between tags and in attributes.
 * @example xmlText("under <b> & over") // "under &lt;b&gt; &amp; over"
 */
export function xmlText(text: string): string {
  return text.replace(forbidden, "").replace(/[&<>"]/g, (character) => escapes.get(character) ?? "");
}

/**
 * An SVG element written as XML, whatever document it belongs to (a page's own way of writing is HTML, which no
 * picture program reads).
 * @example svgText(svg(document, "g", { id: "a" })) // "<g id=\"a\"/>"
 */
export function svgText(element: Element): string {
  const attributes = [...element.attributes].map(({ name, value }) => ` ${name}="${xmlText(value)}"`).join("");
  const inside = [...element.childNodes]
    .map((node) => {
      if (node.nodeType === 1) return svgText(node as Element);
      return node.nodeType === 3 ? xmlText(node.nodeValue ?? "") : "";
    })
    .join("");
  const name = element.localName;
  return inside === "" ? `<${name}${attributes}/>` : `<${name}${attributes}>${inside}</${name}>`;
}
