import { fileURLToPath } from "node:url";
import { Command, CommanderError, InvalidArgumentError } from "commander";
import { catalogue } from "../functions/catalogue.js";
import { version } from "../../package.json";
import type { AuditOptions } from "./audit/audit.js";
import { functionsText } from "./functions.js";
import type { NewOptions } from "./new.js";
import type { PicturesOptions } from "./pictures.js";
import { templatesText } from "./templates-text.js";
import type { RecalcOptions } from "./recalc.js";
import { PortTakenError, serve } from "./serve.js";
import { UsageError } from "./usage.js";

const CALC_HELP = `
Without formulas they are read from standard input, one a line. Each line is answered by one JSON object on one line,
in the same order, blank lines too: {"formula", "value"} or {"formula", "error", "message"}. A spill's value is a list
of rows. Each formula is evaluated for itself; cells it refers to are empty. Formulas with errors still exit with 0.`;

const RECALC_HELP = `
Only saved values change; every other part of a workbook stays byte for byte. A cell that cannot be worked out with
certainty keeps its value and is told. Exit status: 0 done, 1 differences found by --check, 2 a workbook was not taken.`;

const PICTURES_HELP = `
A picture goes where its image number stands: 123, 0123 or IR_0123 finds IR_0123.jpg, never IR_1230.jpg. What does not
fit without doubt is listed and not placed. Of a camera's file only the pixels are taken: no places, no serial numbers.
Another run takes the place of the last one. Exit status: 0 every number has its picture, 1 some have not, 2 the
workbook was not taken.`;

const AUDIT_HELP = `
Columns are found from the client's headers, units and what stands below them; what was taken for what is shown, and what
is doubtful is not taken: --map names it. Each value is worked out again from the report's own readings and settings and
held to the digits that are printed. Readings such as ">150", "~60", "58,2 °C" or "136.8 F" are understood and shown.
Exit status: 0 everything is reproduced, 1 something is not, 2 the report was not taken.`;

const MOST_ROWS = 5000;

const program = new Command("greybody")
  .description(
    "Corrected temperatures, load-adjusted rises, severity grades and their uncertainty for infrared inspection.",
  )
  .version(version, "-V, --version", "print the version")
  .helpOption("-h, --help", "print this help")
  .helpCommand(false)
  .exitOverride()
  // One line, no stack trace: main() prints it.
  .configureOutput({ outputError: () => undefined })
  .action((_options: unknown, command: Command) => {
    const [unknown] = command.args;
    if (unknown !== undefined) throw new UsageError(`there is no command ${unknown}. See \`greybody --help\`.`);
    throw new UsageError("a command is missing. See `greybody --help`.");
  })
  .allowExcessArguments();

program
  .command("calc")
  .description("evaluate formulas")
  .argument("[formula...]", "with or without a leading =")
  // A formula may begin with a minus.
  .allowUnknownOption()
  .addHelpText("after", CALC_HELP)
  .action(async (_formulas: string[], _options: unknown, command: Command) => {
    const option = command.args.find((argument) => /^--?[a-z][a-z-]*$/.test(argument));
    if (option !== undefined) throw new UsageError(`calc has no option ${option}. See \`greybody calc --help\`.`);
    // The engine takes a while to load: only here.
    const { calc } = await import("./calc.js");
    await calc(command.args, catalogue);
  });

program
  .command("recalc")
  .description("work the formulas of workbooks out again without Excel")
  .argument("<file...>", "workbooks: .xlsx, .xlsm")
  .option("-o, --output <file>", "where to write; of several workbooks a folder")
  .option("--in-place", "write over the workbooks themselves")
  .option("--check", "write nothing, list what differs from its saved value")
  .option(
    "--all",
    "every formula, not only those with our functions and what depends on them (always in workbooks of `greybody new`)",
  )
  .option("--volatile", "NOW and TODAY as of now too, which else keep what is saved")
  .option("--tolerance <number>", "relative difference up to which a saved number is right (default: 1e-9)", tolerance)
  .option("--report <file>", "write every cell, with its stored and its recalculated value, as JSON")
  .addHelpText("after", RECALC_HELP)
  .action(async (files: string[], options: RecalcOptions) => {
    const { recalc } = await import("./recalc.js");
    process.exitCode = await recalc(files, options, catalogue);
  });

program
  .command("new")
  .description("write a workbook to be filled in, or a filled demo")
  .argument("<template>", "one of those below")
  .allowExcessArguments(false)
  .option("-o, --output <file>", "where to write (default: the template's name)")
  .option("--units <units>", "C (with metres) or F (with feet); default C, with --from as the last one")
  .option("--rows <number>", "empty rows to begin with, default 40; the table grows as it is typed into", rows)
  .option("--title <title>", "what stands over the first sheet")
  .option(
    "--from <last.xlsx>",
    "of a route: the last one, whose assets, windows, criteria and defaults are carried over",
  )
  .option("--date <yyyy-mm-dd>", "with --from, the day of the new survey: what is overdue by then comes first")
  .addHelpText("after", `\n${templatesText()}`)
  .action(async (template: string, options: NewOptions) => {
    if (options.from !== undefined) {
      const { newFromLast } = await import("./new-from.js");
      process.stdout.write(await newFromLast(template, { ...options, from: options.from }, catalogue));
      return;
    }
    const { newWorkbook } = await import("./new.js");
    process.stdout.write(`${await newWorkbook(template, options, catalogue)} written\n`);
  });

program
  .command("pictures")
  .description("put the thermograms and photos of a folder into a route's exceptions")
  .argument("<route.xlsx>", "a workbook with boxes for pictures")
  .argument("<folder>", "JPEG and PNG files, named after their image numbers")
  .allowExcessArguments(false)
  .option("-o, --output <file>", "where to write; without it nothing is written, only told")
  .option("--in-place", "write over the workbook itself")
  .option("--report <file>", "write what became of every box as JSON")
  .addHelpText("after", PICTURES_HELP)
  .action(async (file: string, folder: string, options: PicturesOptions) => {
    const { pictures } = await import("./pictures.js");
    process.exitCode = await pictures(file, folder, options, catalogue);
  });

program
  .command("audit")
  .description("work a client's report out again: is each number reproduced, does its grade follow")
  .argument("<report>", "the client's table: .xlsx or .csv, whatever its headers")
  .allowExcessArguments(false)
  .option("-o, --output <file>", "where to write findings: .xlsx (living formulas and a page to send), .csv or .json")
  .option("--map <header=column>", "a client's header and our column (none leaves it out); repeatable", several, [])
  .option("--job <name=value>", "what holds for all rows, such as criteria=house; repeatable", several, [])
  .option("--grade <word=number>", "what a word of the report's grades means, 4 = worst; repeatable", several, [])
  .option("--sheet <name>", "of a workbook: the sheet with the table")
  .option("--units <units>", "C or F, where the report does not say it")
  .addHelpText("after", AUDIT_HELP)
  .action(async (file: string, options: AuditOptions) => {
    const { audit } = await import("./audit/audit.js");
    process.exitCode = await audit(file, options, catalogue);
  });

program
  .command("functions")
  .description("list the worksheet functions, or explain one")
  .argument("[name]", "such as CORRECTED")
  .allowExcessArguments(false)
  .action((name: string | undefined) => {
    process.stdout.write(`${functionsText(catalogue, name)}\n`);
  });

program
  .command("serve")
  .description("serve the workbook page on this machine")
  .allowExcessArguments(false)
  .option("--port <number>", "port to listen on", port, 3000)
  .action(async (options: { port: number }) => {
    const serving = await serve({ port: options.port, root: fileURLToPath(new URL("page", import.meta.url)) });
    process.stdout.write(`Greybody is served at ${serving.address} (Ctrl-C ends it)\n`);
  });

// Of a pipe the error comes from outside of any command; of a file it is thrown.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  // The reader has enough, as in `greybody calc | head`: no reason to complain.
  if (error.code === "EPIPE") process.exit(0);
  fail(error.message);
  process.exit();
});

await main();

async function main(): Promise<void> {
  try {
    await program.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError && error.exitCode === 0) return;
    if (error instanceof CommanderError) fail(error.message.replace(/^error: /, "").replaceAll("\n", " "));
    else if (error instanceof UsageError || error instanceof PortTakenError || isOfTheSystem(error))
      fail(error.message);
    else throw error;
  }
}

/** A stream, a file or a port that the system refuses. */
function isOfTheSystem(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && "syscall" in error;
}

/** Bad usage, unreadable input or output that cannot be written. */
function fail(message: string): void {
  process.stderr.write(`greybody: ${message}\n`);
  process.exitCode = 2;
}

function port(text: string): number {
  const number = Number(text);
  if (!/^\d+$/.test(text) || number > 65_535)
    throw new InvalidArgumentError("A port is a whole number from 0 to 65535.");
  return number;
}

function several(text: string, before: readonly string[]): string[] {
  return [...before, text];
}

function rows(text: string): number {
  const number = Number(text);
  if (!/^\d+$/.test(text) || number < 1 || number > MOST_ROWS)
    throw new InvalidArgumentError(`A sheet begins with 1 to ${MOST_ROWS} rows.`);
  return number;
}

function tolerance(text: string): number {
  const number = Number(text);
  if (text.trim() === "" || !(number >= 0) || number === Infinity)
    throw new InvalidArgumentError("A tolerance is a number from 0 on, such as 1e-9.");
  return number;
}
