import { createHash } from "node:crypto";
import type { Plugin } from "vite";
import { contentPolicy } from "./contentPolicy.ts";

const charsetTag = /<meta charset="utf-8"\s*\/?>/i;

/** Puts the policy right after the character set, before anything it governs. */
function withPolicy(html: string, scriptSource: string): string {
  if (!charsetTag.test(html)) throw new Error('missing <meta charset="utf-8"> in index.html; the policy goes after it');
  const policy = `<meta http-equiv="Content-Security-Policy" content="${contentPolicy(scriptSource)}" />`;
  return html.replace(charsetTag, (charset) => `${charset}\n    ${policy}`);
}

/** Adds the content-security policy to the built site. */
export function policyOfSite(): Plugin {
  return {
    name: "policy-of-site",
    apply: "build",
    transformIndexHtml: { order: "post", handler: (html) => withPolicy(html, "'self'") },
  };
}

/** Code that can stand between script tags: no text in it ends the tag or opens a comment. */
export function inlineScript(code: string): string {
  return code
    .replace(/\r\n?/g, "\n")
    .replace(/<\/(script)/gi, "<\\/$1")
    .replace(/<!--/g, "\\x3C!--");
}

/** Folds the one chunk and the one style sheet of the build into index.html and names it steady-boil.html. */
export function oneFile(): Plugin {
  return {
    name: "one-file",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      const outputs = Object.values(bundle);
      const page = outputs.find((output) => output.fileName === "index.html");
      const chunks = outputs.filter((output) => output.type === "chunk");
      const styles = outputs.filter((output) => output.type === "asset" && output.fileName.endsWith(".css"));
      const others = outputs.filter(
        (output) => output !== page && !chunks.some((c) => c === output) && !styles.includes(output),
      );
      const [chunk] = chunks;
      if (page?.type !== "asset" || !chunk || chunks.length !== 1 || others.length > 0) {
        const found = outputs.map((output) => output.fileName).join(", ");
        throw new Error(
          `invalid one file: ${found}; one page, one script and style sheets are allowed, nothing beside`,
        );
      }
      const script = `\n${inlineScript(chunk.code)}\n`;
      const hash = createHash("sha256").update(script, "utf8").digest("base64");
      const sheet = styles.map((style) => (style.type === "asset" ? String(style.source) : "")).join("\n");
      const html = String(page.source)
        .replace(/\s*<script type="module"[^>]*><\/script>/g, "")
        .replace(/\s*<link rel="(?:stylesheet|modulepreload)"[^>]*>/g, "")
        .replace(/<\/head>/i, () => `  <style>\n${sheet.replace(/<\/(style)/gi, "<\\/$1")}\n</style>\n  </head>`)
        .replace(/<\/body>/i, () => `  <script type="module">${script}</script>\n  </body>`);
      for (const name of Object.keys(bundle)) delete bundle[name];
      this.emitFile({ type: "asset", fileName: "steady-boil.html", source: withPolicy(html, `'sha256-${hash}'`) });
    },
  };
}
