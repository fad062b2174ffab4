const named = new Map([
  ["nbsp", " "],
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
  ["deg", "°"],
  ["frac12", "½"],
  ["frac14", "¼"],
  ["frac34", "¾"],
  ["minus", "−"],
  ["ndash", "–"],
  ["mdash", "—"],
  ["plusmn", "±"],
]);

/**
 * Rows of a table that was copied as HTML, one line a row with tabs between the cells. Struck-out text is put between
 * `~~`. Nothing of the page is run or fetched: tags are cut out as text.
 *
 * @param html text with table tags, its lines ending in "\n"
 * @returns the rows and the source line on which each began
 * @example
 * htmlToLines("<tr><td>0:00</td><td>284</td></tr>").lines // ["0:00\t284"]
 */
export function htmlToLines(html: string): { readonly lines: string[]; readonly numbers: number[] } {
  const lines: string[] = [];
  const numbers: number[] = [];
  let row = "";
  let cells = 0;
  let inRow = false;
  let began = 1;
  let line = 1;
  let hidden = "";
  const close = () => {
    if (row.trim() !== "") {
      lines.push(row);
      numbers.push(began);
    }
    row = "";
    cells = 0;
  };
  const add = (text: string) => {
    if (hidden !== "") return;
    if (row === "" && text.trim() !== "" && !inRow) began = line;
    row += decode(text).replace(/[\s\u00a0]+/g, " ");
  };
  let at = 0;
  while (at < html.length) {
    const open = html.indexOf("<", at);
    const text = html.slice(at, open < 0 ? html.length : open);
    add(text);
    line += newlines(text);
    if (open < 0) break;
    const end = html.indexOf(">", open);
    if (end < 0) {
      add(html.slice(open));
      break;
    }
    const tag = html.slice(open + 1, Math.min(end, open + 40)).toLowerCase();
    const name = /^\/?[a-z0-9!-]+/.exec(tag)?.[0] ?? "";
    if (name === "") add("<");
    else if (hidden !== "") hidden = name === `/${hidden}` ? "" : hidden;
    else if (name === "script" || name === "style" || name === "title") hidden = name;
    else if (name === "tr") {
      close();
      inRow = true;
      began = line;
    } else if (name === "/tr" || name === "/table" || name === "table") {
      close();
      inRow = false;
    } else if (name === "td" || name === "th") {
      if (cells > 0) row += "\t";
      cells += 1;
    } else if (["s", "/s", "del", "/del", "strike", "/strike"].includes(name)) row += "~~";
    else if (["br", "p", "/p", "div", "/div", "li", "/li", "h1", "/h1", "h2", "/h2"].includes(name)) {
      if (inRow) row += " ";
      else close();
    }
    at = name === "" ? open + 1 : end + 1;
    if (name !== "") line += newlines(html.slice(open, end));
  }
  close();
  return { lines, numbers };
}

function newlines(text: string): number {
  let count = 0;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) count += 1;
  return count;
}

function decode(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(#x?[0-9a-f]{1,6}|[a-z0-9]{2,8});?/gi, (whole, name: string) => {
    if (!name.startsWith("#")) return named.get(name.toLowerCase()) ?? whole;
    const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10);
    return code > 8 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
