/**
 * Formulas as files hold them. Marks of future functions: [MS-XLSX] 2.2.3; _xlpm. and ANCHORARRAY as workbooks by Excel hold
 * them (from memory); _xldudf_ as in platform notes of this house (OfficeDev issues on custom functions).
 */
import { callsOurs, storedFormula } from "../../src/host/file/write/stored-formula.js";

test.each([
  ["=GREY.CORRECTED(A1,0.95)", "_xldudf_GREY_CORRECTED(A1,0.95)"],
  ["=grey.air_transmission(1)", "_xldudf_GREY_AIR_TRANSMISSION(1)"],
  ["=SUM(A1:A3)", "SUM(A1:A3)"],
  ["=XLOOKUP(A1,B:B,C:C)", "_xlfn.XLOOKUP(A1,B:B,C:C)"],
  ["=FILTER(A1:A3,B1:B3)", "_xlfn._xlws.FILTER(A1:A3,B1:B3)"],
  ["=SORT(UNIQUE(A1:A3))", "_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A3))"],
  ["=LET(a,A1,b,a+1,b*a)", "_xlfn.LET(_xlpm.a,A1,_xlpm.b,_xlpm.a+1,_xlpm.b*_xlpm.a)"],
  ["=LET(size,1,IF(size>0,size,job_size))", "_xlfn.LET(_xlpm.size,1,IF(_xlpm.size>0,_xlpm.size,job_size))"],
  ["=MAP(A1:A3,LAMBDA(x,x+1))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1))"],
  ["='My route'!$W$8#", "_xlfn.ANCHORARRAY('My route'!$W$8)"],
  ["=SUM(B2#)+C3#", "SUM(_xlfn.ANCHORARRAY(B2))+_xlfn.ANCHORARRAY(C3)"],
  ["=T[@a]+T[@[b c]]", "T[[#This Row],[a]]+T[[#This Row],[b c]]"],
  ['="LET(a,1,a) and GREY.X()"&A1', '"LET(a,1,a) and GREY.X()"&A1'],
])("%s is stored as %s", (formula, stored) => {
  expect(storedFormula(formula)).toBe(stored);
});

test("a formula of ours is known, words about one are not", () => {
  expect(callsOurs("=IF(A1,GREY.GRADE(3,A2),0)")).toBe(true);
  expect(callsOurs('="GREY.GRADE(3)"')).toBe(false);
});
