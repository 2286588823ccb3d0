/** What the page gives the host port of its grid: plain answers, at once. The page owns the grid and its workbook. */
import type { Grid } from "../../functions/contract.js";
import type { BookDescription } from "../../templates/contract.js";
import type { CellAt, FieldInfo, PictureBoxInfo, PlacedPicture, Stop, TableInfo, Theme } from "../port.js";
import type { RangeReference } from "../reference.js";
import type { ResolvedFormula } from "./structured.js";

export interface SheetRange extends RangeReference {
  readonly sheet: string;
}

export type FieldPlace = Omit<FieldInfo, "value"> & { readonly unit?: string };

export interface GridAccess {
  sheets(): readonly string[];
  activeSheet(): string;
  selected(): CellAt | undefined;
  tables(): readonly TableInfo[];
  fields(): readonly FieldPlace[];
  /** The values of a range of a sheet that exists, spilled ones too; an error has its message. */
  cells(range: SheetRange): Grid;
  shown(at: CellAt): string;
  formula(at: CellAt): string | undefined;
  /** Table columns and defined names as A1. */
  resolve(formula: string, at: CellAt): ResolvedFormula;
  /** Why a cell may not be written, where it may not. */
  lock(at: CellAt): string | undefined;
  /** How many rows and columns a sheet has. */
  size(sheet: string): { readonly rows: number; readonly columns: number };
  /** Of the sheet in front; undefined where nothing is folded there. */
  folding(): { readonly headers: readonly string[]; readonly hidden: boolean } | undefined;

  select(at: CellAt): Promise<void>;
  /** False where the grid refused. */
  write(at: CellAt, formula: string): Promise<boolean>;
  fold(hide: boolean): Promise<boolean>;
  /** All formulas once more; tells how many call a function of ours. */
  recalculate(): number;
  undo(): Promise<boolean>;
  /** Boxes for pictures, in the order of the sheets. */
  pictureBoxes(): readonly PictureBoxInfo[];
  /** Tells how many pictures stand in boxes now; what is neither placed nor kept is gone. */
  placePictures(pictures: readonly PlacedPicture[], keeps: ReadonlySet<string>): number;
  /** Opens a description in place of the open book; throws, with the old book still open, where it cannot be read. */
  open(description: BookDescription): void;

  theme(): Theme;
  onSelection(listener: () => void): Stop;
  onRecalculated(listener: () => void): Stop;
  onTheme(listener: (theme: Theme) => void): Stop;
}
