/** What the camera's reading is corrected with: the row's own where it has one, else the asset's or the job's. */
import type { Computed } from "./columns.js";
import { fromAssets, fromWindows, given, joined } from "./formula.js";

const WHERE = "Looked up";
const USED = "Settings used";

export function settingsColumns(): Computed[] {
  return [
    { key: "location", group: WHERE, width: 150, formula: `=${fromAssets("location", '""', '"not in Assets"')}` },
    { key: "component", group: WHERE, width: 220, formula: `=${fromAssets("component")}` },
    {
      key: "view",
      group: WHERE,
      width: 68,
      note: "Direct: the part itself. Indirect: what insulates it. Enclosed: only the enclosure.",
      formula: `=${fromAssets("view", '"direct"', '"direct"')}`,
    },
    {
      key: "emissivity_used",
      group: USED,
      width: 84,
      folded: true,
      format: "0.00",
      note: "The row's, else that of the asset's surface in Surfaces.",
      formula: `=IF([asset_id]="","",IF([emissivity]<>"",[emissivity],XLOOKUP(${fromAssets("surface", '"none"')},SurfaceList[surface],${given("SurfaceList[emissivity]")},"")))`,
    },
    {
      key: "outdoors",
      group: "Working",
      width: 72,
      folded: true,
      format: "0",
      note: "1 where the job's reflected for outdoors stands.",
      formula: `=IF([asset_id]="","",IF(([air_taken]="outdoors")+(${fromAssets("access")}="outdoor")>0,1,0))`,
    },
    {
      key: "reflected_used",
      group: USED,
      width: 84,
      folded: true,
      measure: "temperature",
      format: "0.0",
      note: "The row's, else the job's: the one for outdoors where the air is taken outdoors or the asset stands there.",
      formula:
        `=IF([asset_id]="","",IF([reflected]<>"",[reflected],` +
        `IF([outdoors]=1,${given("job_reflected_outdoors")},${given("job_reflected")})))`,
    },
    {
      key: "path_air_used",
      group: USED,
      width: 84,
      folded: true,
      measure: "temperature",
      format: "0.0",
      note: "The row's, else the surrounding air unless it was taken in the enclosure, else the job's.",
      formula:
        `=IF([asset_id]="","",IF([path_air]<>"",[path_air],` +
        `IF(([surrounding_air]<>"")*([air_taken]<>"enclosure"),[surrounding_air],${given("job_path_air")})))`,
    },
    {
      key: "window",
      group: USED,
      width: 84,
      folded: true,
      note: "The window that the asset is seen through.",
      formula: `=${fromAssets("window_id")}`,
    },
    {
      key: "window_transmission",
      group: USED,
      width: 100,
      folded: true,
      format: "0.00",
      note: "1 where there is no window.",
      formula: `=IF([asset_id]="","",IF([window]="",1,${fromWindows("transmission")}))`,
    },
    {
      key: "window_reflectance",
      group: USED,
      width: 96,
      folded: true,
      format: "0.00",
      note: "0 where there is no window.",
      formula: `=IF([asset_id]="","",IF([window]="",0,${fromWindows("reflectance")}))`,
    },
    {
      key: "settings_missing",
      group: USED,
      width: 120,
      folded: true,
      note: "Without these a reading cannot be corrected.",
      formula: `=IF([asset_id]="","",${missingSettings()})`,
    },
  ];
}

/** Words for the settings that neither the row nor the lists nor the job have. */
function missingSettings(): string {
  const missing = (condition: string, words: string): string => `IF(${condition},"${words}, ","")`;
  // What the camera corrected with has to be known to be taken back.
  const corrected = '(job_readings_are<>"apparent")';
  const below1 = (name: string): string => `(ISNUMBER(job_${name})*(job_${name}<1))`;
  return joined(
    [
      missing('[emissivity_used]=""', "emissivity"),
      missing('[reflected_used]=""', "reflected"),
      missing('[path_air_used]=""', "path air"),
      missing('([window]<>"")*([window_transmission]="")', "transmission of window in Windows"),
      missing('([window]<>"")*([window_temp]="")', "window temperature"),
      missing(`${corrected}*([set_emissivity]&job_set_emissivity="")`, "set emissivity"),
      missing(`${corrected}*([set_reflected]&job_set_reflected="")`, "set reflected"),
      missing(`${corrected}*${below1("set_air_transmission")}*(job_set_air_temp="")`, "set air temperature in Job"),
      missing(
        `${corrected}*${below1("set_window_transmission")}*(job_set_window_temp="")`,
        "set window temperature in Job",
      ),
    ],
    ", ",
  ).slice(1);
}
