/** Adds the sheets of a description to the open workbook: asks first, then makes everything in one sync. */
/// <reference types="office-js" />
import type { BookDescription, FreeSheet } from "../../templates/contract.js";
import type { MadeBook } from "../port.js";
import { refuse } from "./answer.js";
import { fillFree, fillFreeFormulas } from "./fill-free.js";
import { fillForm, fillFormulas, fillNotes, fillTable } from "./fill.js";
import { joined, memoryKey, readMemory } from "./memory.js";
import { planBook, type SheetPlan } from "./plan.js";

export async function makeBook(context: Excel.RequestContext, book: BookDescription): Promise<MadeBook> {
  const { worksheets, tables, names, settings } = context.workbook;
  worksheets.load("items/name");
  tables.load("items/name");
  names.load("items/name");
  const setting = settings.getItemOrNullObject(memoryKey);
  setting.load("value");
  await context.sync();
  const plan = planBook(
    book,
    worksheets.items.map(({ name }) => name),
  );
  if (plan.unresolved.length > 0)
    refuse("invalid", `The sheets could not be made: not found: ${plan.unresolved.join(", ")}.`);
  const taken = [...tables.items, ...names.items].map(({ name }) => name.toLowerCase());
  const wanted = [...plan.tables.map(({ name }) => name), ...Object.keys(plan.memory.fields)];
  const clash = wanted.find((name) => taken.includes(name.toLowerCase()));
  if (clash !== undefined)
    refuse(
      "occupied",
      `This workbook holds such sheets already (its ${clash}), and two would take one another's names. Open a new workbook and make them there; nothing was changed here.`,
    );

  const added = plan.sheets.map((sheet) => ({ plan: sheet, worksheet: worksheets.add(sheet.name) }));
  try {
    // Names and tables before the formulas that name them.
    for (const { plan: sheet, worksheet } of added)
      if (sheet.sheet.kind === "form") fillForm(worksheet, sheet.sheet, sheet, names);
    for (const { plan: sheet, worksheet } of added) {
      if (isFree(sheet)) fillFree(worksheet, sheet, names);
      if (sheet.sheet.kind === "notes") fillNotes(worksheet, sheet.sheet, sheet);
      const table = plan.tables.find((one) => one.sheet === sheet.name);
      if (sheet.sheet.kind === "table" && table !== undefined) fillTable(worksheet, sheet.sheet, table);
    }
    for (const { plan: sheet, worksheet } of added) {
      fillFormulas(worksheet, sheet, plan.tables);
      if (isFree(sheet)) fillFreeFormulas(worksheet, sheet, plan.tables);
    }
    settings.add(memoryKey, JSON.stringify(joined(readMemory(setting), plan.memory)));
    added[0]?.worksheet.activate();
    await context.sync();
  } catch (error) {
    await takeBack(
      context,
      added.map(({ worksheet }) => worksheet),
    );
    throw error;
  }
  return { sheets: plan.sheets.map(({ name }) => name) };
}

function isFree(plan: SheetPlan): plan is SheetPlan<FreeSheet> {
  return plan.sheet.kind === "free";
}

/** Half a book is worse than none. What cannot be taken back stays: the error that led here is the one to tell. */
async function takeBack(context: Excel.RequestContext, worksheets: readonly Excel.Worksheet[]): Promise<void> {
  try {
    for (const worksheet of worksheets) worksheet.delete();
    await context.sync();
  } catch {
    // Told by the error that led here.
  }
}
