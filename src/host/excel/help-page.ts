/** The page behind the help and support addresses: plain HTML, made by the build, readable without Excel. */
import { catalogue } from "../../functions/catalogue.js";
import { cautions } from "../../functions/cautions.js";
import type { FunctionSpec } from "../../functions/contract.js";
import { argumentFacts, signature } from "../../functions/describe.js";

/** @param base where this copy is served from */
export function helpPage(base: string, version: string): string {
  const title = "Greybody in Excel";
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'">
<title>${title}</title>
<link rel="icon" href="icons/greybody-32.png">
<link rel="stylesheet" href="pane.css">
</head>
<body class="gb-help">
<main>
<h1>${title}</h1>
<p>Type <code>=GREY.</code> in any cell. An argument takes one value or a range, and the result spills. In brackets stands what may be left out.</p>
<nav aria-label="Functions"><ul>${catalogue.map(({ name }) => `<li><a href="#${name}">${name}</a></li>`).join("")}</ul></nav>
${catalogue.map(functionSection).join("\n")}
<section class="gb-cautions"><h2 id="cautions">Cautions</h2><ol>
${cautions.map(({ title: name, text }) => `<li><strong>${plain(name)}.</strong> ${plain(text)}</li>`).join("\n")}
</ol></section>
<section><h2 id="support">Support</h2>
<p>This is version ${plain(version)}, served from ${plain(base)}: whoever serves it there answers for it. Tell them the cell's formula, what it shows and what you expected; <code>=GREY.ABOUT()</code> lists version, methods and sources.</p>
<p>The functions compute where Excel runs; Greybody sends nothing of a workbook anywhere.</p>
</section>
</main>
</body>
</html>
`;
}

function functionSection(spec: FunctionSpec): string {
  const rows = spec.args.map(
    (argument) =>
      `<dt>${plain(argument.name)}</dt><dd>${plain(argument.help)}<span class="gb-facts">${plain(argumentFacts(argument).join(" · "))}</span></dd>`,
  );
  return `<section class="gb-help-function"><h2 id="${spec.name}">${plain(spec.name)}</h2>
<p>${plain(spec.summary)}</p>
<p class="gb-call">=${plain(signature(spec))}</p>
<dl>${rows.join("\n")}</dl>
<p>Gives ${plain(spec.returns)}.</p>
<p class="gb-example"><code>${plain(spec.example.formula)}</code> → ${plain(spec.example.shows)}</p>
</section>`;
}

function plain(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
