/** Numbers of the whole block and of a box in it. */
import { type Band, bandsOf, type BlockSize, COLUMN_NUMBERS } from "./block.js";
import type { SheetUnits } from "../route/sheet-units.js";

/** A place as one number: row, then column. */
const PLACE = 1000;
export const rowOf = (place: string): string => `INT(${place}/${PLACE})`;
export const columnOf = (place: string): string => `MOD(${place},${PLACE})`;

const namesOf = (size: BlockSize): string =>
  bandsOf(size)
    .map(({ name }) => name)
    .join(",");

export interface WholeFormulas {
  readonly readings: string;
  readonly answered: string;
  readonly noNumber: string;
  readonly maximum: string;
  readonly minimum: string;
  readonly mean: string;
  readonly deviation: string;
  /** @param value the name of the cell that is looked for */
  readonly placeOf: (value: string) => string;
  readonly share: string;
  readonly radianceMean: string;
}

export function whole(size: BlockSize, units: SheetUnits): WholeFormulas {
  const all = namesOf(size);
  const bands = bandsOf(size);
  const some = (rest: string): string => `=IF(COUNT(${all})=0,"",${rest})`;
  const places = (value: string): string =>
    some(
      `LET(value,${value},MIN(${bands
        .map(({ name, above, rows }) => `IF(${name}=value,(SEQUENCE(${rows})+${above})*${PLACE}+${COLUMN_NUMBERS},"")`)
        .join(",")}))`,
    );
  return {
    readings: "=COUNT(grid_readings)",
    answered: `=COUNT(${all})`,
    noNumber: "=COUNTA(grid_readings)-COUNT(grid_readings)",
    maximum: some(`MAX(${all})`),
    minimum: some(`MIN(${all})`),
    mean: some(`AVERAGE(${all})`),
    deviation: `=IF(COUNT(${all})<2,"",STDEV.S(${all}))`,
    placeOf: places,
    share: some(
      `IF(ISNUMBER(grid_above),(${bands.map(({ name }) => `COUNTIF(${name},">"&grid_above)`).join("+")})/COUNT(${all}),"")`,
    ),
    radianceMean: some(
      `GREY.RADIANCE_TEMP((${bands
        .map(
          ({ name }) => `SUM(IFERROR(GREY.RADIANCE(IF(ISNUMBER(${name}),${name},""),grid_band,${units.argument}),""))`,
        )
        .join("+")})/COUNT(${all}),grid_band,${units.argument})`,
    ),
  };
}

/** Boxes that the sheet has room for. */
export const BOXES = 10;
export const BOX_RESULTS = ["cells", "maximum", "row", "column", "minimum", "mean", "deviation", "share"] as const;
const NOTHING = `{${BOX_RESULTS.map(() => '""').join(",")}}`;

const WITHIN = `(${COLUMN_NUMBERS}>=left)*(${COLUMN_NUMBERS}<=right)`;

/**
 * One row of BOX_RESULTS of the corrected cells between two corners. Each band gives its part of the box, or nothing.
 * @param corner the four numbers, by their names here
 */
export function box(size: BlockSize, corner: Readonly<Record<"top" | "left" | "bottom" | "right", string>>): string {
  const bands = bandsOf(size);
  const part = ({ name, above, rows }: Band): string => {
    const numbers = `SEQUENCE(${rows})+${above}`;
    // Two cells where there is nothing: a single text would be an error to MAX, and IFERROR would double a narrow box.
    return (
      `IF((top>${above + rows})+(bottom<=${above})+(top>bottom)+(left>right)+(left>${size.columns})+(right<1)>0,{"",""},` +
      `FILTER(FILTER(${name},(${numbers}>=top)*(${numbers}<=bottom)),${WITHIN}))`
    );
  };
  const parts = bands.map((_, at) => `part_${at + 1}`);
  // The numbers of the box's columns fit a part that holds cells; one that holds none is passed over first.
  const place = ({ above }: Band, at: number): string => {
    const own = `part_${at + 1}`;
    const row = `IF(top>${above},top,${above + 1})+SEQUENCE(ROWS(${own}),1,0)`;
    return `IF(COUNT(${own})=0,{"",""},IF(ISNUMBER(${own}),IF(${own}=most,(${row})*${PLACE}+columns_in,""),""))`;
  };
  const above = parts.map((one) => `SUM(IF(ISNUMBER(${one}),IF(${one}>grid_above,1,0),0))`).join("+");
  const all = parts.join(",");
  return (
    `=LET(top,${corner.top},left,${corner.left},bottom,${corner.bottom},right,${corner.right},` +
    `IF((grid_needs<>"")+(ISNUMBER(top)*ISNUMBER(left)*ISNUMBER(bottom)*ISNUMBER(right)=0)>0,${NOTHING},` +
    `LET(${bands.map((band, at) => `part_${at + 1},${part(band)}`).join(",")},count,COUNT(${all}),` +
    `IF(count=0,${NOTHING},LET(most,MAX(${all}),columns_in,FILTER(${COLUMN_NUMBERS},${WITHIN}),place,MIN(${bands.map(place).join(",")}),` +
    `HSTACK(count,most,${rowOf("place")},${columnOf("place")},MIN(${all}),AVERAGE(${all}),` +
    `IF(count<2,"",STDEV.S(${all})),IF(ISNUMBER(grid_above),(${above})/count,"")))))))`
  );
}
