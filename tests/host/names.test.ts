import { plainNames } from "../../src/host/embedded/names.js";

test.each([
  ["=_xldudf_GREY_CORRECTED(58,0.95,22)", "=GREY.CORRECTED(58,0.95,22)"],
  ["=_xldudf_GREY_AIR_TRANSMISSION(10,20,50)", "=GREY.AIR_TRANSMISSION(10,20,50)"],
  ["=_xldudf_grey_about()", "=grey.about()"],
  ["=_XLDUDF_GREY_ABOUT()", "=GREY.ABOUT()"],
  ["=_xlfn.XLOOKUP(1,A:A,B:B)", "=XLOOKUP(1,A:A,B:B)"],
  ["=_xlfn._xlws.FILTER(A1:A3,B1:B3)", "=FILTER(A1:A3,B1:B3)"],
  ["=_xlfn.LET(_xlpm.x,1,_xlpm.x+1)", "=LET(x,1,x+1)"],
  ["=SUM(_xldudf_GREY_RISE_AT_LOAD(1,2,3),_xlfn.SEQUENCE(2))", "=SUM(GREY.RISE_AT_LOAD(1,2,3),SEQUENCE(2))"],
])("%s becomes %s", (stored, plain) => {
  expect(plainNames(stored)).toBe(plain);
});

test.each([
  '="_xlfn.SUM(1)"',
  "='_xlfn.Sheet'!A1",
  "=T[_xlfn.Col]",
  "=GREY.CORRECTED(1)",
  "=my_xlfn.name",
  "=_xldudf_GREY_CORRECTED",
])("%s stays as it is", (formula) => {
  expect(plainNames(formula)).toBe(formula);
});
