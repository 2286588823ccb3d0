/** The result of a call that is being typed, or why there is none. */
import type { ReactElement } from "react";
import { type Cell, type Grid, isCellError } from "../../functions/contract.js";
import { readable } from "../../functions/units.js";

/** A spill is shown by its first rows. */
const mostRows = 6;

export function Outcome({ preview }: { preview: Grid | undefined }): ReactElement {
  return (
    <div className="gp-outcome" role="status" aria-label="Result">
      {preview === undefined ? (
        <p className="gp-note">Type an argument: a number, a word or a cell such as B3.</p>
      ) : (
        <Shown grid={preview} />
      )}
    </div>
  );
}

function Shown({ grid }: { grid: Grid }): ReactElement {
  const [[single = null] = []] = grid;
  if (grid.length === 1 && grid[0]?.length === 1) {
    return isCellError(single) ? (
      <p>
        <strong>{single.error}</strong> {single.message}
      </p>
    ) : (
      <p className="gp-result">{shown(single)}</p>
    );
  }
  return (
    <>
      <div className="gp-scroll" tabIndex={0} role="group" aria-label="First rows of the result">
        <table>
          <tbody>
            {grid.slice(0, mostRows).map((row, index) => (
              <tr key={index}>
                {row.map((cell, column) => (
                  <td key={column} title={isCellError(cell) ? cell.message : undefined}>
                    {shown(cell)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {grid.length > mostRows ? <p className="gp-note">{`… ${String(grid.length)} rows in all`}</p> : null}
    </>
  );
}

function shown(cell: Cell): string {
  if (cell === null) return "";
  if (isCellError(cell)) return cell.error;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? readable(cell) : cell;
}
